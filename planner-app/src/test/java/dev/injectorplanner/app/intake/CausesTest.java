package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CausesTest {
    private static final String FAMILY_HEAD =
            "family,cylinders,banks,firing_order,cylinder_hours,coolant_l,glycol_percent,injector_part,road_failure_cost\n";
    private static final String TRUCK_HEAD = "truck,vin,depot,family,in_service_on\n";

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(StoreSettings.embedded(folder.resolve("data")));
        write("depots.csv", """
                depot,name,time_zone,bays,labour_hours_per_day,work_days,labour_per_hour,overtime_per_hour
                N,North,UTC,2,16,Mon-Fri,90,130
                """);
        write("parts.csv", "part,kind,supplier,price,lead_days\nI8,injector,S,400,5\n");
        write(
                "engine_families.csv",
                FAMILY_HEAD + "V8,8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000\n");
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void tenThousandRowsOfOneCauseAreOneCause() throws IOException {
        StringBuilder rows = new StringBuilder("truck,taken_at,odometer_km\n");
        for (int i = 0; i < 10_000; i++) {
            rows.append("X")
                    .append(i % 3)
                    .append(",")
                    .append(Instant.ofEpochSecond(1_767_000_000L + i))
                    .append(",")
                    .append(i)
                    .append('\n');
        }
        List<FileReport> reports = check(write("readings.csv", rows.toString()));
        List<Cause> causes = reports.get(0).causes();
        assertThat(causes).hasSize(1);
        assertThat(causes.get(0).rows()).isEqualTo(10_000);
        assertThat(CauseText.lines(causes.get(0)))
                .containsExactly(
                        "10,000 rows of readings.csv, truck: is not known",
                        "first in lines 2, 3, 4; values: \"X0\" 3,334 times, \"X1\" 3,333 times, \"X2\" 3,333 times",
                        "Fix: load it with the trucks first, or correct it.");
    }

    @Test
    void aRefusedFamilyTakesItsTrucksAndTheirReadingsWithItAndIsOneCause() throws IOException {
        write(
                "engine_families.csv",
                FAMILY_HEAD + "V8,x8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000\n");
        Path trucks = write(
                "trucks.csv",
                TRUCK_HEAD + "T1,ZZ908TRK000000001,N,V8,2020-01-01\nT2,ZZ908TRK000000002,N,V8,2020-01-01\n");
        Path readings = write(
                "readings.csv",
                "truck,taken_at,odometer_km\nT1,2026-01-01T00:00Z,5\nT1,2026-01-02 10:00,6\nT2,2026-01-01T00:00Z,7\n");
        List<FileReport> reports =
                check(readings, trucks, file("engine_families.csv"), file("parts.csv"), file("depots.csv"));
        List<Cause> causes =
                reports.stream().flatMap(report -> report.causes().stream()).toList();
        assertThat(causes).hasSize(1);
        assertThat(CauseText.lines(causes.get(0)))
                .containsExactly(
                        "engine_families.csv, line 2, cylinders \"x8\": is not a number. Refused with it, rows that "
                                + "refer to it: 3 of readings, 2 of trucks. Fix: write digits with a dot for decimals and nothing else.");
        assertThat(reports.stream().mapToLong(FileReport::refusedCount).sum()).isEqualTo(6);
        assertThat(causes.get(0).cost()).isEqualTo(6);
    }

    @Test
    void aFileRefusedAsAWholeIsTheCauseOfWhatRefersToIt() throws IOException {
        Path trucks = write("trucks.csv", "truck,depot,family\nT1,N,V8\n");
        Path readings = write("readings.csv", "truck,taken_at,odometer_km\nT1,2026-01-01T00:00Z,5\n");
        List<Cause> causes = check(trucks, readings).stream()
                .flatMap(report -> report.causes().stream())
                .toList();
        assertThat(causes).hasSize(1);
        assertThat(causes.get(0).file()).isEqualTo("trucks.csv");
        assertThat(causes.get(0).takesWith()).containsOnly(java.util.Map.entry("readings", 1L));
    }

    @Test
    void aFileOfWhichNothingIsStoredTakesItsRowsWithIt() throws IOException {
        Path trucks = write(
                "trucks.csv",
                TRUCK_HEAD + "T1,ZZ908TRK000000001,N,V8,2020-01-01\nT2,ZZ908TRK000000002,N,V9,2020-01-01\n");
        Path readings = write("readings.csv", "truck,taken_at,odometer_km\nT1,2026-01-01T00:00Z,5\n");
        new Intake(store)
                .load(
                        List.of(file("depots.csv"), file("parts.csv"), file("engine_families.csv")),
                        LoadSettings.of(Mode.GOOD_ROWS),
                        LoadListener.SILENT);
        List<FileReport> reports = new Intake(store)
                .load(List.of(trucks, readings), LoadSettings.of(Mode.ALL_OR_NOTHING), LoadListener.SILENT);
        List<Cause> causes =
                reports.stream().flatMap(report -> report.causes().stream()).toList();
        assertThat(causes).hasSize(1);
        assertThat(causes.get(0).column()).isEqualTo("family");
        assertThat(causes.get(0).takesWith()).containsOnly(java.util.Map.entry("readings", 1L));
    }

    @Test
    void theRefusedRowsFileHoldsAllOfThemWhenChecking() throws IOException {
        StringBuilder rows = new StringBuilder("truck,taken_at,odometer_km\n");
        for (int i = 0; i < 20_000; i++) {
            rows.append("X,2026-01-01T00:00Z,").append(i).append('\n');
        }
        Path readings = write("readings.csv", rows.toString());
        new Intake(store).load(List.of(readings), LoadSettings.of(Mode.CHECK).withRefusedFiles(), LoadListener.SILENT);
        assertThat(Files.readAllLines(file("readings.refused.csv"))).hasSize(20_001);
    }

    private List<FileReport> check(Path... files) {
        return new Intake(store).load(List.of(files), LoadSettings.of(Mode.CHECK), LoadListener.SILENT);
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(file(name), text);
    }
}
