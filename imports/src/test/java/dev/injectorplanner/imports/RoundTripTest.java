package dev.injectorplanner.imports;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.units.Units;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws: what is written is read back; neither the order of columns nor the spelling of headings matters. */
class RoundTripTest {
    private static final long SEED = 20260403;
    private static final int ROWS = 200;

    @TempDir
    Path folder;

    static Stream<Table<?>> tables() {
        return Tables.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("tables")
    <R> void writtenRowsAreReadBackUnchanged(Table<R> table) throws IOException {
        List<R> rows = new RandomRows(SEED).of(table, ROWS);
        Path file = folder.resolve(table.name() + ".csv");

        TableWriter.write(file, table, rows);
        Collected read = Collected.of(file);

        assertThat(read.complaints()).as("seed %d", SEED).isEmpty();
        assertThat(read.remarks).isEmpty();
        assertThat(read.rows).as("seed %d", SEED).isEqualTo(rows);
    }

    @ParameterizedTest
    @MethodSource("tables")
    <R> void anyOrderOfColumnsAndAnySpellingOfHeadingsLoadsTheSame(Table<R> table) throws IOException {
        for (long seed = SEED; seed < SEED + 5; seed++) {
            Random random = new Random(seed);
            List<R> rows = new RandomRows(seed).of(table, 20);
            List<Integer> order = new ArrayList<>(
                    IntStream.range(0, table.columns().size()).boxed().toList());
            Collections.shuffle(order, random);
            char delimiter = ",;\t".charAt(random.nextInt(3));
            Path file = folder.resolve("shuffled " + seed + ".csv");
            Files.writeString(file, shuffled(table, rows, order, delimiter, random));

            Collected read = Collected.of(file, Collected.usual().withAs(table));

            assertThat(read.complaints()).as("seed %d", seed).isEmpty();
            assertThat(read.rows).as("seed %d", seed).isEqualTo(rows);
        }
    }

    private static <R> String shuffled(
            Table<R> table, List<R> rows, List<Integer> order, char delimiter, Random random) {
        String headings = order.stream()
                .map(at -> spelt(table.columns().get(at).name(), random))
                .collect(Collectors.joining(String.valueOf(delimiter)));
        String body = rows.stream()
                .map(row -> order.stream()
                        .map(at -> '"' + table.cells(row).get(at).replace("\"", "\"\"") + '"')
                        .collect(Collectors.joining(String.valueOf(delimiter))))
                .collect(Collectors.joining("\r\n"));
        return headings + "\r\n" + body;
    }

    private static String spelt(String heading, Random random) {
        return switch (random.nextInt(5)) {
            case 0 -> heading.toUpperCase(Locale.ROOT);
            case 1 -> " " + heading.replace('_', ' ') + " ";
            case 2 -> heading.replace('_', '-');
            case 3 -> heading.replace("_", "");
            default -> Character.toUpperCase(heading.charAt(0)) + heading.substring(1);
        };
    }

    /** Mile and gallon are exact by definition: NIST SP 811 (2008), appendix B. */
    @Test
    void milesAndGallonsLoadTheSameAsKilometresAndLitres() throws IOException {
        List<Reading> readings = new RandomRows(SEED).of(Tables.READINGS, ROWS);
        Path file = folder.resolve("readings.csv");
        Files.writeString(
                file,
                readings.stream()
                        .map(r -> "\"" + r.truck().replace("\"", "\"\"") + "\"," + r.takenAt() + ","
                                + (r.odometerKm() == null ? "" : r.odometerKm() / Units.KM_PER_MILE) + ","
                                + (r.engineHours() == null ? "" : r.engineHours()))
                        .collect(Collectors.joining("\n", "truck,taken_at,Odometer (mi),engine hours\n", "\n")));
        Collected read = Collected.of(file);
        assertThat(read.complaints()).isEmpty();
        for (int i = 0; i < ROWS; i++) {
            Double km = readings.get(i).odometerKm();
            Double readKm = ((Reading) read.rows.get(i)).odometerKm();
            if (km == null) {
                assertThat(readKm).isNull();
            } else {
                assertThat(Math.abs(readKm - km)).isLessThanOrEqualTo(1e-9 * km);
            }
        }
    }

    @Test
    void everyMeasuredColumnTakesBothItsUnits() throws IOException {
        Path families = folder.resolve("engine_families.csv");
        Files.writeString(families, """
                family,cylinders,banks,firing_order,cylinder_hours,coolant_gal,glycol_percent,injector_part,road_failure_cost
                F,2,1-2,1-2,0.5,10,50%,P,4000
                """);
        EngineFamily family = (EngineFamily) Collected.of(families).rows.get(0);
        assertThat(family.coolantLitres()).isEqualTo(37.85411784);

        Path injectors = folder.resolve("injectors.csv");
        Files.writeString(injectors, """
                truck,cylinder,part,origin,fitted_on,odometer_mi,removed_on,removed_odometer_mi
                T,1,P,new,2024-01-02,100,2025-01-02,1000
                """);
        FittedInjector injector = (FittedInjector) Collected.of(injectors).rows.get(0);
        assertThat(injector.odometerKm()).isEqualTo(160.9344);
        assertThat(injector.removedOdometerKm()).isEqualTo(1609.344);
    }
}
