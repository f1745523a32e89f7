package dev.injectorplanner.app.intake;

import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.RowPlace;
import dev.injectorplanner.imports.TableFinder;
import dev.injectorplanner.imports.cell.InstantCells;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Gathers why the rows of one load were refused: equal causes once, and rows that refer to something refused under the cause
 * that refused it. Keeps at most {@value #MOST} causes of a file apart; later ones are counted together.
 */
final class Causes {
    private static final int MOST = 2_000;
    private static final Pattern PARTICULARS = Pattern.compile("\"[^\"]*\"|\\S*[0-9]\\S*");

    private final Map<Path, Map<String, CauseCount>> byFile = new LinkedHashMap<>();
    private final Map<Name, CauseCount> refusedNames = new HashMap<>();
    private final Map<Class<?>, CauseCount> refusedFiles = new HashMap<>();

    private record Name(Class<?> type, String name) {}

    /** A row that is wrong in itself. */
    void row(Path file, Table<?> table, RowPlace place, List<Complaint> complaints) {
        CauseCount first = refusedTruck(place, complaints);
        if (first != null) {
            dependant(table, place, first);
            return;
        }
        for (Complaint complaint : complaints) {
            CauseCount cause = of(file, table, complaint);
            cause.add(complaint);
            first = first == null ? cause : first;
        }
        if (first != null) {
            remember(table, place, first);
        }
    }

    /** Where a local time could not be read since its truck was refused, and nothing else is wrong: what refused the truck. */
    private @Nullable CauseCount refusedTruck(RowPlace place, List<Complaint> complaints) {
        boolean forTheTruck = complaints.stream().allMatch(each -> each.reason().startsWith(InstantCells.NO_DEPOT));
        return forTheTruck ? root(Truck.class, place.cell("truck")) : null;
    }

    /** A row that refers to something that was refused. */
    void dependant(Table<?> table, RowPlace place, CauseCount root) {
        root.takeWith(table.name());
        remember(table, place, root);
    }

    /** A whole file that was refused; what its name says of its table. */
    void file(FileRefusedException refusal, Path file) {
        CauseCount cause = CauseCount.ofFile(refusal);
        byFile.computeIfAbsent(file, each -> new LinkedHashMap<>()).put("", cause);
        Table<?> table = TableFinder.byFileName(file);
        if (table != null) {
            refusedFiles.putIfAbsent(table.rowType(), cause);
        }
    }

    /** A file of which nothing is stored since some of its rows are refused: rows that refer to its good rows go with it. */
    void nothingStored(Path file, List<TableCount> tables) {
        byFile.getOrDefault(file, Map.of()).values().stream()
                .findFirst()
                .ifPresent(cause -> tables.forEach(table ->
                        refusedFiles.putIfAbsent(Tables.get(table.table()).rowType(), cause)));
    }

    /** What refused the thing that a row refers to, or null where it was never there. */
    @Nullable
    CauseCount rootOf(UnknownNameException unknown) {
        return root(unknown.type(), unknown.value());
    }

    private @Nullable CauseCount root(Class<?> type, String name) {
        CauseCount row = refusedNames.get(new Name(type, name));
        return row == null ? refusedFiles.get(type) : row;
    }

    /** The causes of one file, the most costly first. */
    List<Cause> of(Path file) {
        return byFile.getOrDefault(file, Map.of()).values().stream()
                .map(CauseCount::cause)
                .sorted(Comparator.comparingLong(Cause::cost).reversed())
                .toList();
    }

    private CauseCount of(Path file, Table<?> table, Complaint complaint) {
        Map<String, CauseCount> causes = byFile.computeIfAbsent(file, each -> new LinkedHashMap<>());
        String key = String.join(
                "\n",
                String.valueOf(complaint.sheet()),
                table.name(),
                complaint.column(),
                PARTICULARS.matcher(complaint.reason()).replaceAll("#"));
        String kept = causes.size() < MOST || causes.containsKey(key) ? key : "others";
        return causes.computeIfAbsent(kept, each -> new CauseCount(table, complaint));
    }

    private void remember(Table<?> table, RowPlace place, CauseCount cause) {
        if (table.keyColumns().size() == 1) {
            String name = place.cell(table.keyColumns().get(0));
            if (!name.isEmpty()) {
                refusedNames.putIfAbsent(new Name(table.rowType(), name), cause);
            }
        }
    }
}
