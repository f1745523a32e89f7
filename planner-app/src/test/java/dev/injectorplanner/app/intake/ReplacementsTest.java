package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FittedInjector;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One row closes the old injector and opens the new one, in any order, any number of times. */
class ReplacementsTest {
    private static final String HEAD = "truck,cylinders,done_on,odometer_mi,part,origin,serial,code,found\n";

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void open() throws IOException {
        store = Store.open(StoreSettings.embedded(folder.resolve("data")));
        fill(store);
    }

    private void fill(Store into) throws IOException {
        Path depots = write("depots.csv", """
                depot,name,time_zone,bays,labour_hours_per_day,work_days,labour_per_hour,overtime_per_hour
                N,North,UTC,2,16,Mon-Fri,90,130
                """);
        Path parts =
                write("parts.csv", "part,kind,supplier,price,lead_days\nI8,injector,S,400,5\nI9,injector,S,400,5\n");
        Path families = write("engine_families.csv", """
                family,cylinders,banks,firing_order,cylinder_hours,coolant_l,glycol_percent,injector_part,road_failure_cost
                V8,8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000
                """);
        Path trucks =
                write("trucks.csv", "truck,vin,depot,family,in_service_on\nT1,ZZ908TRK000000001,N,V8,2018-01-01\n");
        List<FileReport> reports = new Intake(into)
                .load(List.of(depots, parts, families, trucks), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        assertThat(reports).noneMatch(FileReport::anyRefused);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aRowEndsTheOldInjectorAndBeginsTheNewOne() throws IOException {
        load(HEAD + "T1,3,2024-05-08,100000,,reman,,,\nT1,Cyl 3,2025-09-30,150000,I9,new,S1,,failed\n");
        assertThat(lines(3))
                .containsExactly(
                        "I8 UNKNOWN null 1900-01-01 null > 2024-05-08 160934.4 null",
                        "I8 REMAN null 2024-05-08 160934.4 > 2025-09-30 241401.6 FAILED",
                        "I9 NEW S1 2025-09-30 241401.6 > null null null");
    }

    @Test
    void cylindersAreNamedAsWorkOrdersNameThem() throws IOException {
        load(HEAD + "T1,left bank,2020-01-01,,,,,,\nT1,bank 2,2020-01-02,,,,,,\nT1,all,2021-01-01,,,,,,\n"
                + "T1,1-4,2022-01-01,,,,,,\nT1,\"5, 6\",2023-01-01,,,,A;B,,\nT1,full set,2024-01-01,,,,,,\n");
        assertThat(lines(7)).hasSize(4).element(1).asString().contains("2020-01-01 null > 2021-01-01");
        assertThat(lines(2)).hasSize(5).element(1).asString().contains("2020-01-02 null > 2021-01-01");
        assertThat(lines(3)).hasSize(5);
        assertThat(lines(6)).element(3).asString().contains("B 2023-01-01");
    }

    @Test
    void loadingTwiceChangesNothing() throws IOException {
        String rows = HEAD + "T1,all,2021-01-01,90000,,reman,,,worn\nT1,3,2024-05-08,100000,,,S9,,failed\n";
        load(rows);
        List<FittedInjector> before = store.snapshot().injectors();
        FileReport again = load(rows);
        assertThat(again.tables().get(0).unchanged()).isEqualTo(2);
        assertThat(store.snapshot().injectors()).isEqualTo(before);
    }

    @Test
    void theOrderOfRowsDoesNotMatter() throws IOException {
        long seed = 20;
        List<String> rows = List.of(
                "T1,all,2019-01-01,50000,,new,,,\n",
                "T1,left bank,2020-06-01,90000,,reman,,,worn\n",
                "T1,3,2021-02-03,120000,I9,reman,S1,,failed\n",
                "T1,3,2023-02-03,190000,,reman,S2,,failed\n",
                "T1,1-4,2024-02-03,230000,,new,,,healthy\n");
        load(HEAD + String.join("", rows));
        List<FittedInjector> expected = sorted(store);
        for (int round = 0; round < 10; round++) {
            List<String> shuffled = new ArrayList<>(rows);
            Collections.shuffle(shuffled, new Random(seed + round));
            Path data = folder.resolve("data" + round);
            try (Store other = Store.open(StoreSettings.embedded(data))) {
                fill(other);
                for (String row : shuffled) { // each in a load of its own
                    Path file = write("replacements.csv", HEAD + row);
                    new Intake(other).load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
                }
                assertThat(sorted(other)).as("seed %d", seed + round).isEqualTo(expected);
            }
        }
    }

    @Test
    void anInjectorFileLoadedAgainDoesNotReopenWhatAWorkOrderClosed() throws IOException {
        Path injectors =
                write("injectors.csv", "truck,cylinder,part,origin,fitted_on,odometer_km\nT1,3,I8,new,2018-01-01,0\n");
        Path orders = write("replacements.csv", HEAD + "T1,3,2024-05-08,100000,,reman,,,failed\n");
        List<Path> both = List.of(orders, injectors);
        assertThat(new Intake(store).load(both, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT))
                .noneMatch(FileReport::anyRefused);
        List<FittedInjector> before = store.snapshot().injectors();
        assertThat(before).hasSize(2);
        assertThat(new Intake(store).load(both, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT))
                .allSatisfy(
                        report -> assertThat(report.tables().get(0).unchanged()).isEqualTo(1));
        assertThat(store.snapshot().injectors()).isEqualTo(before);
    }

    @Test
    void theInjectorFileMayComeAfterTheWorkOrder() throws IOException {
        load(HEAD + "T1,3,2024-05-08,100000,,reman,,,failed\n");
        Path injectors =
                write("injectors.csv", "truck,cylinder,part,origin,fitted_on,odometer_km\nT1,3,I8,new,2019-01-01,7\n");
        assertThat(new Intake(store).load(List.of(injectors), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT))
                .noneMatch(FileReport::anyRefused);
        assertThat(lines(3))
                .containsExactly(
                        "I8 UNKNOWN null 1900-01-01 null > 2019-01-01 7.0 null",
                        "I8 NEW null 2019-01-01 7.0 > 2024-05-08 160934.4 FAILED",
                        "I8 REMAN null 2024-05-08 160934.4 > null null null");
    }

    @Test
    void whatDoesNotFitTheEngineIsRefused() throws IOException {
        FileReport report =
                load(HEAD + "T1,9,2024-05-08,,,,,,\nT1,front bank,2024-05-08,,,,,,\nT1,1-2,2024-05-08,,,,S1,,\n");
        assertThat(report.complaints().stream().map(Object::toString))
                .containsExactly(
                        "replacements.csv, line 2, cylinders \"9\": family V8 has 8 cylinders. Fix: enter 1 to 8.",
                        "replacements.csv, line 3, cylinders \"front bank\": family V8 has no such bank. Fix: name one of left,"
                                + " right, or the cylinders.",
                        "replacements.csv, line 4, serial \"S1\": names 1 for 2 cylinders of truck T1. Fix: give one a cylinder,"
                                + " separated by semicolons, or a row for each cylinder.");
    }

    @Test
    void checkingKnowsTheInjectorsOfTheOtherFile() throws IOException {
        Path injectors =
                write("injectors.csv", "truck,cylinder,part,origin,fitted_on,odometer_km\nT1,3,I8,new,2018-01-01,0\n");
        Path orders = write("replacements.csv", HEAD + "T1,3,2024-05-08,100000,,reman,,,failed\n");
        assertThat(new Intake(store).load(List.of(orders, injectors), LoadSettings.of(Mode.CHECK), LoadListener.SILENT))
                .noneMatch(FileReport::anyRefused);
        assertThat(store.snapshot().injectors()).isEmpty();
    }

    private FileReport load(String rows) throws IOException {
        return new Intake(store)
                .load(List.of(write("replacements.csv", rows)), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT)
                .get(0);
    }

    private List<String> lines(int cylinder) {
        return sorted(store).stream()
                .filter(each -> each.cylinder() == cylinder)
                .map(each -> each.part() + " " + each.origin() + " " + each.serial() + " " + each.fittedOn() + " "
                        + km(each.odometerKm()) + " > " + each.removedOn() + " " + km(each.removedOdometerKm()) + " "
                        + each.found())
                .toList();
    }

    private static String km(@Nullable Double km) {
        return km == null ? "null" : String.valueOf(Math.rint(km * 10) / 10);
    }

    private static List<FittedInjector> sorted(Store store) {
        return store.snapshot().injectors().stream()
                .sorted(Comparator.comparing(FittedInjector::cylinder).thenComparing(FittedInjector::fittedOn))
                .toList();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
