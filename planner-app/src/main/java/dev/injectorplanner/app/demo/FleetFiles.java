package dev.injectorplanner.app.demo;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.imports.TableWriter;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A fleet as files, one a table, such as a fleet would hand them in. */
public final class FleetFiles {
    private FleetFiles() {}

    /**
     * Writes every table of a fleet that has rows: a file without rows would be refused.
     *
     * @return the files, in the order of loading
     */
    public static List<Path> write(FleetSnapshot fleet, Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        Map<Table<?>, List<?>> rows = rows(fleet);
        for (Table<?> table : Tables.ALL) {
            List<?> ofTable = rows.getOrDefault(table, List.of());
            if (!ofTable.isEmpty()) {
                Path file = folder.resolve(nameOf(table));
                write(file, table, ofTable);
                files.add(file);
            }
        }
        return files;
    }

    static String nameOf(Table<?> table) {
        return table.name() + ".csv";
    }

    @SuppressWarnings("unchecked") // rows() pairs each table with its own rows
    private static <R> void write(Path file, Table<R> table, List<?> rows) throws IOException {
        TableWriter.write(file, table, (List<R>) rows);
    }

    private static Map<Table<?>, List<?>> rows(FleetSnapshot fleet) {
        return Map.ofEntries(
                Map.entry(Tables.DEPOTS, fleet.depots()),
                Map.entry(Tables.CAPACITY, fleet.capacity()),
                Map.entry(Tables.ENGINE_FAMILIES, fleet.engineFamilies()),
                Map.entry(Tables.ACCESS, fleet.access()),
                Map.entry(Tables.DUTY_GROUPS, fleet.dutyGroups()),
                Map.entry(Tables.TRUCKS, fleet.trucks()),
                Map.entry(Tables.INJECTORS, fleet.injectors()),
                Map.entry(Tables.READINGS, fleet.readings()),
                Map.entry(Tables.FAULTS, fleet.faults()),
                Map.entry(Tables.CYLINDER_TESTS, fleet.cylinderTests()),
                Map.entry(Tables.PARTS, fleet.parts()),
                Map.entry(Tables.JOB_PARTS, fleet.jobParts()),
                Map.entry(Tables.STOCK, fleet.stock()),
                Map.entry(Tables.PURCHASE_LINES, fleet.purchaseLines()),
                Map.entry(Tables.TRANSFERS, fleet.transfers()),
                Map.entry(Tables.AWAY, fleet.away()),
                Map.entry(Tables.INTERVALS, fleet.intervals()),
                Map.entry(Tables.RULES, fleet.rules()),
                Map.entry(Tables.SHIFTS, fleet.shifts()),
                Map.entry(Tables.REPAIRS, fleet.repairs()),
                Map.entry(Tables.RETURNS, fleet.returns()),
                Map.entry(Tables.TASK_DONE, fleet.tasksDone()),
                Map.entry(Tables.FAILURE_ANSWERS, fleet.failureAnswers()));
    }
}
