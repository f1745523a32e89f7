package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IntakeTest {
    @TempDir
    private Path folder;

    private Store store;
    private Intake intake;

    @BeforeEach
    void open() {
        store = Store.open(new StoreSettings("jdbc:hsqldb:mem:" + folder.getFileName() + ";hsqldb.tx=mvcc", "SA", ""));
        intake = new Intake(store);
    }

    @AfterEach
    void close() throws Exception {
        try (var connection = store.dataSource().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("SHUTDOWN");
        }
        store.close();
    }

    @Test
    void files_in_any_order_become_the_fleet() throws IOException {
        List<Path> files = FleetFiles.write(OneOfEach.fleet(), folder);
        Collections.reverse(files);
        List<FileReport> reports = load(Mode.GOOD_ROWS, files);
        assertThat(reports).noneMatch(FileReport::anyRefused).allMatch(FileReport::applied);
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void loading_again_changes_nothing() throws IOException {
        List<Path> files = FleetFiles.write(OneOfEach.fleet(), folder);
        load(Mode.GOOD_ROWS, files);
        for (FileReport report : load(Mode.GOOD_ROWS, files)) {
            assertThat(report.tables()).allSatisfy(count -> {
                assertThat(count.unchanged()).isEqualTo(count.read()).isPositive();
                assertThat(count.added() + count.changed() + count.refused()).isZero();
            });
        }
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void checking_stores_nothing_and_lets_files_refer_to_one_another() throws IOException {
        List<FileReport> reports = load(Mode.CHECK, FleetFiles.write(OneOfEach.fleet(), folder));
        assertThat(reports).noneMatch(FileReport::anyRefused).noneMatch(FileReport::applied);
        assertThat(store.snapshot().depots()).isEmpty();
    }

    @Test
    void good_rows_go_in_and_refused_ones_stand_beside_the_file() throws IOException {
        load(Mode.GOOD_ROWS, FleetFiles.write(OneOfEach.fleet(), folder));
        Path file = write("stock.csv", "depot,part,on_hand\nNorth,SEAL-1,9\nNroth,SEAL-1,4\nNorth,SEAL-1,-4\n");
        FileReport report = load(Mode.GOOD_ROWS, List.of(file)).get(0);
        assertThat(report.complaints())
                .extracting(Object::toString)
                .containsExactlyInAnyOrder(
                        "stock.csv, line 3, depot \"Nroth\": is not known."
                                + " Fix: load it with the depots first, or correct it: the closest is North.",
                        "stock.csv, line 4, on_hand \"-4\": must be from 0 to 10000000."
                                + " Fix: enter a number from 0 to 10000000.");
        TableCount count = report.tables().get(0);
        assertThat(List.of(count.read(), count.added(), count.changed(), count.unchanged(), count.refused()))
                .containsExactly(3L, 0L, 1L, 0L, 2L);
        assertThat(store.snapshot().stock().get(0).onHand()).isEqualTo(9);
        assertThat(report.refusedRows()).containsExactly(folder.resolve("stock.refused.csv"));
        assertThat(Files.readString(folder.resolve("stock.refused.csv"))).contains("Nroth", "closest is North");
    }

    @Test
    void all_or_nothing_takes_nothing_where_a_row_is_refused() throws IOException {
        load(Mode.GOOD_ROWS, FleetFiles.write(OneOfEach.fleet(), folder));
        Path file = write("stock.csv", "depot,part,on_hand\nNorth,SEAL-1,9\nNorth,INJ-4R,2\nNroth,SEAL-1,4\n");
        FileReport report = load(Mode.ALL_OR_NOTHING, List.of(file)).get(0);
        assertThat(report.applied()).isFalse();
        assertThat(report.refusedCount()).isEqualTo(1);
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
        Path mended = write("stock.csv", "depot,part,on_hand\nNorth,SEAL-1,9\nNorth,INJ-4R,2\n");
        assertThat(load(Mode.ALL_OR_NOTHING, List.of(mended)).get(0).applied()).isTrue();
        assertThat(store.snapshot().stock()).hasSize(2);
    }

    @Test
    void a_cylinder_takes_one_injector_at_a_time_whatever_the_order_of_rows() throws IOException {
        load(Mode.GOOD_ROWS, FleetFiles.write(OneOfEach.fleet(), folder));
        String head = "truck,cylinder,part,origin,fitted_on,removed_on\n";
        Path overlap = write("injectors.csv", head + "T-1,1,INJ-4R,reman,2026-01-05,\n");
        FileReport refused = load(Mode.GOOD_ROWS, List.of(overlap)).get(0);
        assertThat(refused.complaints())
                .singleElement()
                .asString()
                .contains(
                        "cylinder 1 of truck T-1 already holds the injector fitted on 2025-03-02 and has no removed_on.");
        Path both = write(
                "injectors.csv",
                head.replace("\n", ",fitting\n")
                        + "T-1,1,INJ-4R,reman,2026-01-05,,\nT-1,1,INJ-4R,new,2025-03-02,2026-01-05,2\n");
        FileReport taken = load(Mode.GOOD_ROWS, List.of(both)).get(0);
        assertThat(taken.anyRefused()).isFalse();
        assertThat(store.snapshot().injectors())
                .hasSize(OneOfEach.fleet().injectors().size() + 1);
    }

    @Test
    void an_odometer_that_goes_back_is_kept_and_flagged() throws IOException {
        load(Mode.GOOD_ROWS, FleetFiles.write(OneOfEach.fleet(), folder));
        Path file = write(
                "readings.csv", "truck,taken_at,odometer_mi\nT-2,2026-01-01T00:00Z,1000\nT-2,2026-01-08T00:00Z,400\n");
        FileReport report = load(Mode.GOOD_ROWS, List.of(file)).get(0);
        assertThat(report.tables().get(0).added()).isEqualTo(2);
        assertThat(report.remarks())
                .extracting(Object::toString)
                .containsExactly(
                        "readings.csv: truck T-2, odometer goes back (set meter_replaced to yes if the meter was replaced),"
                                + " from 1609.3 km of 2026-01-01T00:00:00Z to 643.7 km of 2026-01-08T00:00:00Z:"
                                + " kept and flagged.");
    }

    @Test
    void a_broken_file_is_refused_whole_and_the_others_go_in() throws IOException {
        List<Path> files = FleetFiles.write(OneOfEach.fleet(), folder);
        Path broken = write("stock.csv", "depot,part,on_hand\nNorth,\"SEAL-1,9\n");
        List<FileReport> reports = load(Mode.GOOD_ROWS, files);
        assertThat(reports)
                .filteredOn(report -> report.file().equals(broken))
                .singleElement()
                .satisfies(report -> {
                    assertThat(report.refusal()).startsWith("stock.csv: ").contains("Fix: ");
                    assertThat(report.applied()).isFalse();
                });
        assertThat(store.snapshot().stock()).isEmpty();
        assertThat(store.snapshot().trucks()).hasSize(2);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private List<FileReport> load(Mode mode, List<Path> files) {
        return intake.load(files, LoadSettings.of(mode), LoadListener.SILENT);
    }
}
