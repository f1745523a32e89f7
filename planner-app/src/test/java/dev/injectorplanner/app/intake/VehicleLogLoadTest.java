package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.testkit.TruckLogs;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.j1939.TroubleCode;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Vehicle logs through the intake: whose they are, and what becomes of them. */
class VehicleLogLoadTest {
    private static final Instant AT = Instant.parse("2026-03-01T08:00:00Z");
    private static final String VIN = "1M8GDM9AXKP042788";
    private static final TroubleCode INJECTOR_3 = new TroubleCode(653, 5, 7, 0);

    @TempDir
    private Path folder;

    private Store store;
    private Intake intake;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(new StoreSettings("jdbc:hsqldb:mem:" + folder.getFileName() + ";hsqldb.tx=mvcc", "SA", ""));
        intake = new Intake(store);
        load(FleetFiles.write(OneOfEach.fleet(), folder).toArray(Path[]::new));
    }

    @AfterEach
    void close() throws Exception {
        try (var connection = store.dataSource().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("SHUTDOWN");
        }
        store.close();
    }

    private List<FileReport> load(Path... files) {
        return intake.load(List.of(files), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }

    private List<Fault> faults() {
        return store.snapshot().faults().stream()
                .filter(fault -> !fault.seenAt().isBefore(AT))
                .toList();
    }

    private TruckLogs driving() {
        return new TruckLogs()
                .odometer(AT, 200_000)
                .faults(AT.plusSeconds(600), 900, 0, INJECTOR_3)
                .odometer(AT.plusSeconds(1_600), 200_016)
                .hours(AT.plusSeconds(1_600), 5_000.5);
    }

    @Test
    void a_log_becomes_an_episode_and_a_reading() throws IOException {
        Path log = driving().write(folder.resolve("T-1_2026-03-01.log"));
        FileReport report = load(log).get(0);
        assertThat(report.refusal()).isNull();
        assertThat(faults())
                .containsExactly(new Fault(
                        "T-1",
                        AT.plusSeconds(600),
                        new FaultCode("SPN 653 FMI 5"),
                        3,
                        1,
                        200_006.0,
                        AT.plusSeconds(1_499)));
        assertThat(store.snapshot().readings())
                .contains(new Reading("T-1", AT.plusSeconds(1_600), 200_016.0, 5_000.5, false));
        assertThat(report.remarks())
                .extracting(Object::toString)
                .contains(
                        "T-1_2026-03-01.log: truck T-1 by its file name.",
                        "T-1_2026-03-01.log: vehicle log: 903 frames, 900 fault messages.");
    }

    @Test
    void loading_it_again_changes_nothing() throws IOException {
        Path log = driving().write(folder.resolve("T-1_2026-03-01.log"));
        load(log);
        assertThat(load(log).get(0).tables()).allSatisfy(count -> {
            assertThat(count.unchanged()).isEqualTo(count.read()).isPositive();
        });
    }

    @Test
    void an_episode_goes_on_in_the_next_log() throws IOException {
        Path first = driving().write(folder.resolve("T-1_a.log"));
        Path second = new TruckLogs()
                .faults(AT.plusSeconds(1_800), 60, 0, new TroubleCode(653, 5, 8, 0))
                .write(folder.resolve("T-1_b.log"));
        load(first);
        load(second);
        load(first);
        load(second);
        assertThat(faults()).hasSize(1);
        assertThat(faults().get(0).seenAt()).isEqualTo(AT.plusSeconds(600));
        assertThat(faults().get(0).lastSeenAt()).isEqualTo(AT.plusSeconds(1_859));
    }

    @Test
    void the_odometer_may_come_from_stored_readings() throws IOException {
        Path readings = Files.writeString(
                folder.resolve("more readings.csv"),
                "truck,taken_at,odometer_km\nT-1,2026-03-01T00:00:00Z,199000\nT-1,2026-03-02T00:00:00Z,199600\n");
        Path log = new TruckLogs()
                .faults(AT.plusSeconds(4 * 3_600), 60, 0, INJECTOR_3)
                .write(folder.resolve("T-1.log"));
        load(readings, log);
        assertThat(faults().get(0).odometerKm()).isEqualTo(199_300);
    }

    @Test
    void the_vin_in_the_log_tells_the_truck() throws IOException {
        FileReport report = load(driving().vin(AT, VIN).write(folder.resolve("recording 5.log")))
                .get(0);
        assertThat(report.remarks())
                .extracting(Object::toString)
                .contains("recording 5.log: truck T-1 by the VIN in it.");
        assertThat(faults()).hasSize(1);
    }

    @Test
    void a_log_of_nobody_is_refused() throws IOException {
        assertThat(load(driving().write(folder.resolve("x.log"))).get(0).refusal())
                .isEqualTo(
                        "x.log: cannot be given to a truck: its name does not follow \"{truck}*\", and no VIN in it."
                                + " Fix: name it after its truck, such as T009_2026-03-02.log, or add it to table log_sources.");
        assertThat(load(driving().vin(AT, "1G4AH59H45G118341").write(folder.resolve("y.log")))
                        .get(0)
                        .refusal())
                .contains("VIN 1G4AH59H45G118341 is not in trucks");
        assertThat(faults()).isEmpty();
    }

    @Test
    void name_and_vin_that_disagree_are_refused() throws IOException {
        Path trucks = Files.writeString(
                folder.resolve("trucks.csv"),
                "truck,vin,depot,family,in_service_on\nT-2,1G4AH59H45G118341,North,Four,2024-01-01\n");
        load(trucks);
        String refusal = load(driving().vin(AT, VIN).write(folder.resolve("T-2.log")))
                .get(0)
                .refusal();
        assertThat(refusal).contains("is a log of truck T-2 by its name, but of truck T-1 by the VIN in it");
    }

    @Test
    void the_table_tells_trucks_by_log_and_by_address() throws IOException {
        Path table = Files.writeString(
                folder.resolve("log_sources.csv"), "log,source_address,truck,spn_layout\nrecorder9*,0,T-1,\n*,39,,1\n");
        Path log = new TruckLogs()
                .faults(AT, 10, 0, INJECTOR_3)
                .faults(AT, 10, 3, new TroubleCode(654, 5, 1, 0))
                .write(folder.resolve("Recorder9 March.log"));
        FileReport report = load(log, table).get(1);
        assertThat(report.refusal()).isNull();
        assertThat(faults()).extracting(Fault::cylinder).containsExactly(3);
    }

    /** D2862 of the published messages: layout 1 though its conversion bit is 0 (published/j1939.md). */
    @Test
    void an_old_layout_is_set_by_address() throws IOException {
        load(Files.writeString(folder.resolve("log_sources.csv"), "log,source_address,truck,spn_layout\n*,39,,1\n"));
        load(Files.writeString(folder.resolve("T-1.log"), "(1772352000.000000) can0 1CFECA27#C1FFFE00C201FFFF\n"));
        assertThat(faults()).extracting(fault -> fault.code().text()).containsExactly("SPN 520198 FMI 2");
    }

    @Test
    void a_cylinder_that_the_engine_has_not_is_refused_with_its_row() throws IOException {
        FileReport report = load(new TruckLogs()
                        .faults(AT, 5, 0, new TroubleCode(658, 5, 1, 0), INJECTOR_3)
                        .write(folder.resolve("T-1.log")))
                .get(0);
        assertThat(report.complaints())
                .extracting(Object::toString)
                .allSatisfy(text -> assertThat(text).contains("family Four has 4 cylinders"));
        assertThat(report.refusedCount()).isEqualTo(1);
        assertThat(faults()).extracting(Fault::cylinder).containsExactly(3);
        assertThat(Files.readString(report.refusedRows().get(0))).contains("SPN 658 FMI 5");
    }

    @Test
    void times_from_the_start_of_the_recording_are_refused() throws IOException {
        Path log = Files.writeString(folder.resolve("T-1.log"), "(0.000000) can0 18FECA00#00FF8D020501FFFF\n");
        assertThat(load(log).get(0).refusal()).contains("so no day is known").contains("candump -L");
    }

    /** A depot of Riga: 10:00 there is 8:00 UTC in winter. */
    @Test
    void times_without_an_offset_are_the_depots() throws IOException {
        Path log = Files.writeString(
                folder.resolve("T-1.log"), "2026-03-01 10:00:00.0 18FECA00 8 00 FF 8D 02 05 01 FF FF\n");
        load(log);
        assertThat(faults()).extracting(Fault::seenAt).containsExactly(AT);
    }

    @Test
    void damaged_lines_are_reported() throws IOException {
        Path log = driving().write(folder.resolve("T-1.log"));
        Files.writeString(log, Files.readString(log) + "(1772352000.000000) can0 18FECA00#0\n");
        assertThat(load(log).get(0).remarks())
                .extracting(Object::toString)
                .anySatisfy(text ->
                        assertThat(text).contains("1 damaged line left out, the first: line 904 is not a frame"));
    }

    @Test
    void the_sites_own_rule_for_names() throws IOException {
        intake = new Intake(store, () -> new LogNameRule("logger-*-{vin}.*"));
        load(driving().write(folder.resolve("logger-77-" + VIN + ".candump")));
        assertThat(faults()).hasSize(1);
    }
}
