package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.imports.Complaint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work orders that say otherwise than what is known: taken in beside it, or refused with a question. */
class ReplacementConflictsTest {
    private static final String HEAD = "truck,cylinders,done_on,serial,found\n";

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(StoreSettings.embedded(folder.resolve("data")));
        Path depots = write("depots.csv", """
                depot,name,time_zone,bays,labour_hours_per_day,work_days,labour_per_hour,overtime_per_hour
                N,North,UTC,2,16,Mon-Fri,90,130
                """);
        Path parts = write("parts.csv", "part,kind,supplier,price,lead_days\nI8,injector,S,400,5\n");
        Path families = write("engine_families.csv", """
                family,cylinders,banks,firing_order,cylinder_hours,coolant_l,glycol_percent,injector_part,road_failure_cost
                V8,8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000
                """);
        Path trucks =
                write("trucks.csv", "truck,vin,depot,family,in_service_on\nT1,ZZ908TRK000000001,N,V8,2018-01-01\n");
        assertThat(load(depots, parts, families, trucks)).noneMatch(FileReport::anyRefused);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aSecondSerialOfOneDayIsASecondFitting() throws IOException {
        String rows = HEAD + "T1,3,2024-05-08,S1,worn\nT1,3,2024-05-08,S2,failed\n";
        assertThat(orders(rows).anyRefused()).isFalse();
        assertThat(lines())
                .containsExactly(
                        "null 1900-01-01/1 > 2024-05-08 WORN",
                        "S1 2024-05-08/1 > 2024-05-08 FAILED",
                        "S2 2024-05-08/2 > null null");
        assertThat(orders(rows).tables().get(0).unchanged()).isEqualTo(2);
        assertThat(lines()).hasSize(3);
    }

    @Test
    void whatWasFoundIsKeptOnTheFirstLoad() throws IOException {
        Path injectors = write(
                "injectors.csv",
                "truck,cylinder,part,origin,serial,fitted_on,removed_on\nT1,3,I8,new,S0,2018-01-01,2024-05-08\n");
        assertThat(load(injectors)).noneMatch(FileReport::anyRefused);
        String rows = HEAD + "T1,3,2024-05-08,S1,failed\n";
        orders(rows);
        assertThat(lines()).containsExactly("S0 2018-01-01/1 > 2024-05-08 FAILED", "S1 2024-05-08/1 > null null");
        assertThat(orders(rows).tables().get(0).unchanged()).isEqualTo(1);
    }

    @Test
    void theSameWorkBookedADayLaterIsAskedAbout() throws IOException {
        orders(HEAD + "T1,3,2024-05-08,S1,failed\n");
        List<String> before = lines();
        FileReport report = orders(HEAD + "T1,3,2024-05-09,S1,failed\n");
        assertThat(report.complaints())
                .extracting(Complaint::reason)
                .containsExactly("serial S1 is in cylinder 3 since 2024-05-08: is it the same work?");
        assertThat(lines()).isEqualTo(before);
        assertThat(orders(HEAD + "T1,3,2025-05-09,S1,failed\n").anyRefused())
                .as("an overhauled unit may come back after a year")
                .isFalse();
    }

    @Test
    void aRowOfManyCylindersIsRefusedAsAWhole() throws IOException {
        orders(HEAD + "T1,3,2024-05-08,S1,failed\n");
        assertThat(orders(HEAD + "T1,3 4,2024-05-09,S1; S2,failed\n").anyRefused())
                .isTrue();
        assertThat(store.snapshot().injectors()).noneMatch(each -> each.cylinder() == 4);
    }

    @Test
    void aCloseOutStands() throws IOException, SQLException {
        orders(HEAD + "T1,3,2024-05-08,S1,failed\n");
        try (Connection connection = store.dataSource().getConnection();
                Statement insert = connection.createStatement()) {
            insert.execute("insert into close_out (id, form_key, truck, depot, done_on, version, why, labour_hours,"
                    + " meter_replaced, extras, tasks, remarks, closed_at, made_at, made_by) values (1, 'k', 'T1', 'N',"
                    + " date '2024-05-08', 1, '', 2, false, '', '', '', current_timestamp, current_timestamp, 'me')");
            insert.execute(
                    "insert into close_out_cylinder (close_out, cylinder, fitted, found, part, serial, origin,"
                            + " programmed, read_back, reason) values (1, 3, true, 'FAILED', 'I8', 'S1', 'NEW', true, 'NONE', '')");
            connection.commit();
        }
        List<String> before = lines();
        FileReport report = orders(HEAD + "T1,3,2024-05-08,S9,worn\n");
        assertThat(report.complaints())
                .extracting(Complaint::reason)
                .containsExactly("the close-out of 2024-05-08 put serial S1 into cylinder 3");
        assertThat(lines()).isEqualTo(before);
    }

    @Test
    void allSixOfAnEightCylinderEngineIsRefused() throws IOException {
        FileReport report = orders(HEAD + "T1,all 6,2024-05-08,,\n");
        assertThat(report.complaints()).extracting(Complaint::reason).containsExactly("family V8 has 8 cylinders");
        assertThat(store.snapshot().injectors()).isEmpty();
        assertThat(orders(HEAD + "T1,set of 8,2024-05-08,,\n").anyRefused()).isFalse();
        assertThat(store.snapshot().injectors()).hasSize(16);
    }

    @Test
    void aRefusedRowMovesNothing() throws IOException {
        orders(HEAD + "T1,3,2024-05-08,S1,failed\n");
        Path injectors = write(
                "injectors.csv",
                "truck,cylinder,part,origin,fitted_on\nT1,3,I8,new,2020-01-01\nT1,3,I8,new,2019-01-01\n");
        assertThat(load(injectors).get(0).anyRefused()).isTrue();
        assertThat(lines())
                .containsExactly(
                        "null 1900-01-01/1 > 2020-01-01 null",
                        "null 2020-01-01/1 > 2024-05-08 FAILED",
                        "S1 2024-05-08/1 > null null");
    }

    private FileReport orders(String text) throws IOException {
        return load(write("replacements.csv", text)).get(0);
    }

    private List<FileReport> load(Path... files) {
        return new Intake(store).load(List.of(files), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }

    private List<String> lines() {
        return store.snapshot().injectors().stream()
                .filter(each -> each.cylinder() == 3)
                .sorted(Comparator.comparing(FittedInjector::fittedOn).thenComparing(FittedInjector::fitting))
                .map(each -> each.serial() + " " + each.fittedOn() + "/" + each.fitting() + " > " + each.removedOn()
                        + " " + each.found())
                .toList();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
