package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The templates lie with the code: same columns, same order, rows that load and refer to each other. */
class TemplatesTest {
    private static final Path TEMPLATES = Path.of("samples", "templates");

    static Stream<Table<?>> tables() {
        return Tables.ALL.stream();
    }

    private static Collected read(Table<?> table) {
        return Collected.of(TEMPLATES.resolve(table.name() + ".csv"));
    }

    @ParameterizedTest
    @MethodSource("tables")
    <R> void everyTableHasItsTemplateOfTwoRowsAsTheWriterWritesThem(Table<R> table) throws IOException {
        Collected read = read(table);

        assertThat(read.complaints()).isEmpty();
        assertThat(read.remarks).isEmpty();
        assertThat(read.tables).containsExactly(table, table);
        StringWriter written = new StringWriter();
        try (TableWriter<R> writer = TableWriter.to(written, table)) {
            read.rows.forEach(row -> writer.row(table.rowType().cast(row)));
        }
        assertThat(Files.readString(TEMPLATES.resolve(table.name() + ".csv"))).isEqualTo(written.toString());
    }

    @Test
    void thereAreNoOthers() throws IOException {
        try (Stream<Path> files = Files.list(TEMPLATES)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Tables.ALL.stream()
                            .map(table -> table.name() + ".csv")
                            .toList());
        }
    }

    @Test
    void whatIsReferredToIsThereAndWasLoadedBefore() {
        Map<String, Set<String>> known = new HashMap<>();
        List<String> dangling = new ArrayList<>();
        for (Table<?> table : Tables.ALL) {
            for (Object row : read(table).rows) {
                references(row).forEach((kind, name) -> {
                    if (!known.getOrDefault(kind, Set.of()).contains(name)) {
                        dangling.add(table + " refers to " + kind + " " + name);
                    }
                });
            }
            known.put(table.name(), names(table));
        }
        assertThat(dangling).isEmpty();
    }

    private static Set<String> names(Table<?> table) {
        return read(table).rows.stream()
                .map(row -> row instanceof AccessStep step ? step.family() + "/" + step.step() : first(table, row))
                .collect(Collectors.toSet());
    }

    private static <R> String first(Table<R> table, Object row) {
        return String.valueOf(table.key(table.rowType().cast(row)).get(0));
    }

    /** What a row refers to: table and name; what is empty refers to nothing. */
    private static Map<String, String> references(Object row) {
        Map<String, String> found = new HashMap<>();
        if (row instanceof EngineFamily family) {
            found.put("parts", family.injectorPart());
        } else if (row instanceof Truck truck) {
            found.put("depots", truck.depot());
            found.put("engine_families", truck.family());
            found.put("duty_groups", truck.dutyGroup());
        } else if (row instanceof JobPart job) {
            found.put("engine_families", job.family());
            found.put("parts", job.part());
            found.put("access", job.step() == null ? null : job.family() + "/" + job.step());
        } else if (row instanceof PurchaseLine line) {
            found.put("depots", line.depot());
            found.put("parts", line.part());
        } else if (row instanceof StockLine line) {
            found.put("depots", line.depot());
            found.put("parts", line.part());
        } else if (row instanceof Transfer transfer) {
            found.put("depots", transfer.to());
        } else if (row instanceof FittedInjector injector) {
            found.put("trucks", injector.truck());
            found.put("parts", injector.part());
        } else if (row instanceof Replacement replacement) {
            found.put("trucks", replacement.truck());
            found.put("parts", replacement.part());
        } else if (row instanceof LogSource source) {
            found.put("trucks", source.truck());
        } else if (!(row instanceof Depot || row instanceof Part || row instanceof DutyGroup)) {
            found.put(oneReference(row), OTHERS.get(row.getClass()).apply(row));
        }
        found.values().removeIf(Objects::isNull);
        return found;
    }

    private static String oneReference(Object row) {
        if (row instanceof CapacityOverride || row instanceof DepotShift) {
            return "depots";
        }
        if (row instanceof FailureAnswer) {
            return "parts";
        }
        boolean ofFamily = row instanceof AccessStep || row instanceof IntervalTask || row instanceof Rule;
        return ofFamily ? "engine_families" : "trucks";
    }

    private static final Map<Class<?>, Function<Object, String>> OTHERS = Map.ofEntries(
            Map.entry(CapacityOverride.class, row -> ((CapacityOverride) row).depot()),
            Map.entry(AccessStep.class, row -> ((AccessStep) row).family()),
            Map.entry(IntervalTask.class, row -> ((IntervalTask) row).family()),
            Map.entry(Rule.class, row -> ((Rule) row).family()),
            Map.entry(Reading.class, row -> ((Reading) row).truck()),
            Map.entry(Fault.class, row -> ((Fault) row).truck()),
            Map.entry(CylinderTest.class, row -> ((CylinderTest) row).truck()),
            Map.entry(AwayWindow.class, row -> ((AwayWindow) row).truck()),
            Map.entry(DepotShift.class, row -> ((DepotShift) row).depot()),
            Map.entry(UnitReturn.class, row -> ((UnitReturn) row).truck()),
            Map.entry(Repair.class, row -> ((Repair) row).truck()),
            Map.entry(TaskDone.class, row -> ((TaskDone) row).truck()),
            Map.entry(FailureAnswer.class, row -> ((FailureAnswer) row).part()));
}
