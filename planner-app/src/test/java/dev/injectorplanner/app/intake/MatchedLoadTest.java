package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Matches that are kept, and the loads that use them. */
class MatchedLoadTest {
    private static final String MATCH = """
            source: "odometers.csv"
            table: readings
            numbers: "plain"
            dates: "dmy"
            columns:
              "Unit": "truck"
              "When": "taken_at"
              "Odo": "odometer_km"
            """;

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files = List.of(
                write("depots.csv", """
                        depot,name,time_zone,bays,labour_hours_per_day,work_days,labour_per_hour,overtime_per_hour
                        N,North,UTC,2,16,Mon-Fri,90,130
                        """),
                write("parts.csv", "part,kind,supplier,price,lead_days\nI8,injector,S,400,5\n"),
                write("engine_families.csv", """
                        family,cylinders,banks,firing_order,cylinder_hours,coolant_l,glycol_percent,injector_part,road_failure_cost
                        V8,8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000
                        """),
                write("trucks.csv", "truck,vin,depot,family,in_service_on\nT1,ZZ908TRK000000001,N,V8,2018-01-01\n"));
        assertThat(load(files, LoadSettings.of(Mode.GOOD_ROWS))).noneMatch(FileReport::anyRefused);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void refusedRowsOfAMatchedFileLoadByItsMatch() throws IOException {
        keep();
        Path file = write("odometers.csv", "Unit,When,Odo\nT1,03/04/2026,1000\nT1,04/04/2026,much\n");
        assertThat(load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS))).allMatch(FileReport::anyRefused);
        Path refused = folder.resolve("odometers.refused.csv");
        Files.writeString(refused, Files.readString(refused).replace("much", "1100"));
        assertThat(load(List.of(refused), LoadSettings.of(Mode.GOOD_ROWS))).noneMatch(FileReport::anyRefused);
        assertThat(store.snapshot().readings()).hasSize(2);
    }

    @Test
    void whatIsSaidNowDoesNotGiveWayToAKeptMatch() throws IOException {
        keep();
        Path file = write("odometers.csv", "Unit,When,Odo\nT1,03/04/2026,1000\n");
        LoadSettings said = new LoadSettings(null, DateOrder.MONTH_FIRST, Mode.GOOD_ROWS);
        assertThat(load(List.of(file), said).get(0).refusal()).contains("reads dates otherwise than was said now");
        assertThat(store.snapshot().readings()).isEmpty();
    }

    @Test
    void oneUnreadableMatchStopsNoLoad() throws IOException, SQLException {
        keep();
        try (Connection connection = store.dataSource().getConnection();
                Statement update = connection.createStatement()) {
            update.execute("insert into file_match (source_key, source, of_table, match_text, saved_at, saved_by)"
                    + " values ('k', 'old.csv', 'readings', 'made by another version', current_timestamp, 'me')");
            connection.commit();
        }
        KeptMatches matches = new Intake(store).matches();
        assertThat(matches.list()).hasSize(1);
        assertThat(matches.unreadable())
                .extracting(KeptMatches.Unreadable::source)
                .containsExactly("old.csv");
        Path file = write("odometers.csv", "Unit,When,Odo\nT1,03/04/2026,1000\n");
        assertThat(load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS))).noneMatch(FileReport::anyRefused);
    }

    @Test
    void aFaultWithoutACountIsOneReportAndStaysUnchanged() throws IOException {
        Path file = write(
                "faults.csv",
                "truck,seen_at,code,count\nT1,2026-03-01 06:00,651/5,40\nT1,2026-03-02 06:00,651/5,\nT1,2026-03-03 06:00,651/5,41\n");
        assertThat(load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS))).noneMatch(FileReport::anyRefused);
        assertThat(store.snapshot().faults()).filteredOn(Fault::isUncounted).hasSize(1);
        assertThat(load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS))
                        .get(0)
                        .tables()
                        .get(0)
                        .unchanged())
                .isEqualTo(3);
    }

    private void keep() {
        new Intake(store).matches().save(match(), Instant.EPOCH, "me");
    }

    private static FileMatch match() {
        return MatchText.parse(Path.of("odometers.csv.match.yaml"), MATCH);
    }

    private List<FileReport> load(List<Path> files, LoadSettings settings) {
        return new Intake(store).load(files, settings, LoadListener.SILENT);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
