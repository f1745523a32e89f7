package dev.injectorplanner.app.closeout;

import static dev.injectorplanner.app.closeout.DemoStore.PART;
import static dev.injectorplanner.app.closeout.DemoStore.TODAY;
import static dev.injectorplanner.app.closeout.DemoStore.allEight;
import static dev.injectorplanner.app.closeout.DemoStore.code;
import static dev.injectorplanner.app.closeout.DemoStore.entry;
import static dev.injectorplanner.app.closeout.DemoStore.fitted;
import static dev.injectorplanner.app.closeout.DemoStore.open;
import static dev.injectorplanner.app.closeout.DemoStore.serial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Close-outs entered late, corrected, voided; several fittings a day. Each test has a truck of its own. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class LateCloseOutContract {
    private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
    private static final IsoWeek WEEK = IsoWeek.of(TODAY);

    private Application application;
    private CloseOuts closeOuts;
    private final List<String> trucks = new ArrayList<>();

    abstract StoreSettings store(Path data) throws Exception;

    @BeforeAll
    void load(@TempDir Path files) throws Exception {
        application = DemoStore.load(store(files.resolve("data")), files.resolve("files"));
        closeOuts = new CloseOuts(application.store());
        trucks.addAll(DemoStore.trucksWithEight(fleet()));
    }

    @AfterAll
    void close() {
        application.close();
    }

    private FleetSnapshot fleet() {
        return application.store().snapshot();
    }

    private String truck() {
        return trucks.remove(0);
    }

    private String depotOf(String truck) {
        return fleet().trucks().stream()
                .filter(row -> row.truck().equals(truck))
                .findFirst()
                .orElseThrow()
                .depot();
    }

    private double stock(String truck, String part) {
        return fleet().stock().stream()
                .filter(line ->
                        line.depot().equals(depotOf(truck)) && line.part().equals(part))
                .mapToDouble(line -> line.onHand())
                .sum();
    }

    private double lastKm(String truck) {
        return fleet().readings().stream()
                .filter(row -> row.truck().equals(truck) && row.odometerKm() != null)
                .max(Comparator.comparing(Reading::takenAt))
                .orElseThrow()
                .odometerKm();
    }

    private static CloseOutEntry read(
            String key, String truck, LocalDate on, Double km, LocalTime hour, List<Cylinder> cylinders) {
        CloseOutEntry from = entry(key, truck, cylinders);
        return new CloseOutEntry(
                key,
                truck,
                "2026-W10",
                on,
                6.5,
                km,
                null,
                false,
                "",
                from.tasks(),
                null,
                cylinders,
                from.used(),
                List.of(),
                hour);
    }

    private void reading(String truck, Instant at, double km) {
        try (StoreWriter writer = application.store().writer()) {
            writer.merge(Reading.class, List.of(new Reading(truck, at, km, null, false)), true);
            writer.commit();
        }
    }

    @Test
    void a_close_out_of_the_morning_is_corrected_next_day_though_the_truck_has_reported_since() {
        String truck = truck();
        double km = lastKm(truck) + 40;
        CloseOut first = closeOuts
                .close(
                        read("m1", truck, TODAY, km, null, List.of(fitted(truck, 1, Found.WORN))),
                        MORNING,
                        "Ilze",
                        TODAY)
                .closeOut();
        assertThat(first.finishedAt()).isEqualTo(MORNING);
        reading(truck, MORNING.plus(Duration.ofHours(2)), km + 120); // before noon
        CloseOut second = closeOuts
                .correct(
                        first.id(),
                        read("m2", truck, TODAY, km, null, List.of(fitted(truck, 1, Found.FAILED))),
                        "it had failed",
                        MORNING.plus(Duration.ofDays(1)),
                        "Anna",
                        TODAY.plusDays(1))
                .closeOut();
        assertThat(second.finishedAt()).isEqualTo(MORNING);
        assertThat(second.readAt()).isEqualTo(MORNING);
        assertThat(fleet().readings())
                .filteredOn(row -> row.truck().equals(truck) && row.takenAt().equals(MORNING))
                .singleElement()
                .satisfies(row -> assertThat(row.odometerKm()).isEqualTo(km));
    }

    @Test
    void meters_of_a_late_entry_are_held_against_the_readings_after_it_too() {
        String truck = truck();
        LocalDate past = TODAY.minusDays(20);
        var thrown = catchThrowableOfType(
                RefusedEntryException.class,
                () -> closeOuts.close(
                        read("late", truck, past, lastKm(truck) + 100, null, List.of()), MORNING, "Ilze", TODAY));
        assertThat(thrown.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.field()).isEqualTo("odometer");
            assertThat(problem.words())
                    .contains("is above ", "read on 2026-02-", "Fix: correct it, or the day and hour");
        });
        double then = fleet().readings().stream()
                .filter(row -> row.truck().equals(truck)
                        && row.odometerKm() != null
                        && row.takenAt().isBefore(MORNING.minus(Duration.ofDays(20))))
                .mapToDouble(Reading::odometerKm)
                .max()
                .orElseThrow();
        CloseOut made = closeOuts
                .close(read("late", truck, past, then, LocalTime.of(16, 30), List.of()), MORNING, "Ilze", TODAY)
                .closeOut();
        String zone = fleet().depots().stream()
                .filter(depot -> depot.depot().equals(depotOf(truck)))
                .findFirst()
                .orElseThrow()
                .timeZone()
                .getId();
        assertThat(made.finishedAt())
                .isEqualTo(past.atTime(16, 30).atZone(java.time.ZoneId.of(zone)).toInstant());
    }

    @Test
    void work_cannot_be_finished_later_than_now() {
        String truck = truck();
        assertThat(closeOuts.check(read("soon", truck, TODAY, null, LocalTime.of(23, 59), List.of()), MORNING, TODAY))
                .singleElement()
                .satisfies(problem -> assertThat(problem.words()).contains("hour finished \"23:59\": is after now"));
    }

    private long alert(String truck, int cylinder, String why) {
        return new StoreSql(application.store().dataSource()).inTransaction(connection -> {
            long id = StoreSql.nextIds(connection, "alert_seq");
            StoreSql.update(
                    connection,
                    "insert into alert (id, depot, truck, cylinder, rule, truck_key, cylinder_key, subject_key, open_key,"
                            + " state, action, evidence, limit_words, limit_source, due_on, raised_at, cleared_at, cleared_why)"
                            + " values (?, ?, ?, ?, 'FAULTS', ?, ?, '', ?, 'CLEARED', 'REPLACE', 'faults', '3 faults',"
                            + " 'site', ?, ?, ?, ?)",
                    id,
                    depotOf(truck),
                    truck,
                    cylinder,
                    truck,
                    cylinder,
                    id,
                    TODAY,
                    MORNING.minus(Duration.ofDays(9)),
                    MORNING,
                    why);
            return id;
        });
    }

    /** A truck whose visit is pinned to a day, confirmed, with a kit of two. */
    private String prepared(String first, String second) {
        String truck = truck();
        application.holds().hold(Hold.day(truck, pin(), MORNING.minusSeconds(900), "Ilze", "driver asked"));
        application.holds().confirm(Map.of(truck, WEEK), MORNING.minusSeconds(600), "Ilze");
        SerialisedStock shelf = new SerialisedStock(application.store());
        shelf.receive(
                new GoodsIn(
                        depotOf(truck),
                        PART,
                        Origin.REMAN,
                        List.of(new GoodsIn.Unit(first, code(truck, 1)), new GoodsIn.Unit(second, code(truck, 2)))),
                MORNING.minusSeconds(500),
                "Ilze");
        new StoreSql(application.store().dataSource()).inTransaction(connection -> {
            StoreSql.update(
                    connection, "update shelf_injector set truck = ?, cylinder = 1 where serial = ?", truck, first);
            return StoreSql.update(
                    connection, "update shelf_injector set truck = ?, cylinder = 2 where serial = ?", truck, second);
        });
        return truck;
    }

    private static dev.injectorplanner.core.schedule.days.DayPin pin() {
        return new dev.injectorplanner.core.schedule.days.DayPin(TODAY, 1, LocalTime.of(8, 0));
    }

    private static Cylinder from(String truck, int cylinder, String serial) {
        String code = code(truck, cylinder);
        return new Cylinder(cylinder, true, Found.WORN, serial, code, Origin.REMAN, true, code, false, "");
    }

    /** All that a close-out touches. */
    private List<Object> state(String truck) {
        var holds = application.holds().holds(depotOf(truck), WEEK);
        return List.of(
                open(fleet(), truck),
                fleet().stock(),
                fleet().tasksDone(),
                fleet().readings().size(),
                String.valueOf(holds.pins().get(truck)),
                String.valueOf(holds.confirmed().get(truck)),
                new SerialisedStock(application.store())
                        .kitOf(truck).values().stream()
                                .map(row -> row.cylinder() + " " + row.serial())
                                .sorted()
                                .toList());
    }

    @Test
    void voiding_gives_back_pin_confirmation_stock_kit_alerts_and_lives() {
        String truck = prepared("KA-1", "KA-2");
        List<Object> before = state(truck);
        Cylinder two = fitted(truck, 2, Found.WORN);
        CloseOut made = closeOuts
                .close(
                        read(
                                "v1",
                                truck,
                                TODAY,
                                lastKm(truck) + 10,
                                null,
                                List.of(from(truck, 1, "KA-1"), withCode(two))),
                        MORNING,
                        "Ilze",
                        TODAY)
                .closeOut();
        long replaced = alert(truck, 1, "injector replaced on " + TODAY);
        long other = alert(truck, 5, "no longer due by the plan of " + TODAY);
        assertThat(state(truck)).isNotEqualTo(before);
        assertThat(application.holds().holds(depotOf(truck), WEEK).pins()).doesNotContainKey(truck);
        assertThat(fleet().tasksDone()).extracting(TaskDone::truck).contains(truck);

        CloseOut voided = closeOuts.voidIt(made.id(), truck, "wrong truck's sheet", MORNING.plusSeconds(60), "Anna");
        assertThat(state(truck)).isEqualTo(before);
        assertThat(voided.holds()).isFalse();
        assertThat(voided.voided().why()).isEqualTo("wrong truck's sheet");
        assertThat(closeOuts.ofTruck(truck)).hasSize(1);
        assertThat(closeOuts.since(depotOf(truck), MORNING.minusSeconds(60))).doesNotContainKey(truck);
        Alerts alerts = new Alerts(application.store().dataSource());
        assertThat(alerts.get(replaced).state()).isEqualTo(AlertState.RAISED);
        assertThat(alerts.history(replaced)).last().satisfies(event -> {
            assertThat(event.who()).isEqualTo("Anna");
            assertThat(event.why()).isEqualTo("the close-out was voided");
        });
        assertThat(alerts.get(other).state()).isEqualTo(AlertState.CLEARED);
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class,
                        () -> closeOuts.voidIt(made.id(), truck, "again", MORNING, "Anna")))
                .hasMessageContaining("is out of date");
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class, () -> closeOuts.voidIt(made.id(), truck, " ", MORNING, "Anna")))
                .hasMessageContaining("reason for voiding it: is empty");
    }

    /** Cylinder 2 gets one that was never received, so that its kit place is freed. */
    private static Cylinder withCode(Cylinder from) {
        String code = from.code().replace('Z', 'Y');
        return new Cylinder(
                from.cylinder(), true, from.found(), from.serial(), code, from.origin(), true, code, false, "");
    }

    @Test
    void a_correction_to_not_done_gives_everything_back_before_it_does_the_new() {
        String truck = prepared("KB-1", "KB-2");
        List<Object> before = state(truck);
        CloseOut made = closeOuts
                .close(
                        read("n1", truck, TODAY, null, null, List.of(from(truck, 1, "KB-1"), from(truck, 2, "KB-2"))),
                        MORNING,
                        "Ilze",
                        TODAY)
                .closeOut();
        Cylinder left = new Cylinder(2, false, null, "", "", null, false, "", false, "bolt seized");
        CloseOutEntry corrected = new CloseOutEntry(
                "n2",
                truck,
                null, // an unplanned job after all: the visit's pin holds on
                TODAY,
                2.0,
                null,
                null,
                false,
                "",
                List.of(),
                null,
                List.of(from(truck, 1, "KB-1"), left),
                List.of(),
                List.of(),
                null);
        closeOuts.correct(made.id(), corrected, "second one not done", MORNING.plusSeconds(90), "Anna", TODAY);
        assertThat(new SerialisedStock(application.store()).kitOf(truck)).containsOnlyKeys(2);
        assertThat(application.holds().holds(depotOf(truck), WEEK).pins()).containsKey(truck);
        assertThat(fleet().tasksDone()).extracting(TaskDone::truck).doesNotContain(truck);
        assertThat(open(fleet(), truck).get(1).serial()).isNotEqualTo("KB-2");
        CloseOut newest = closeOuts.ofTruck(truck).get(0);
        closeOuts.voidIt(newest.id(), truck, "not done at all", MORNING.plusSeconds(120), "Anna");
        assertThat(state(truck)).isEqualTo(before);
    }

    @Test
    void an_injector_that_fails_the_same_day_is_a_failure_with_its_claim() {
        String truck = truck();
        closeOuts.close(
                read("d1", truck, TODAY, null, null, List.of(fitted(truck, 3, Found.WORN))), MORNING, "Ilze", TODAY);
        String code = code(truck, 3).replace('Z', 'Q');
        Cylinder again = new Cylinder(3, true, Found.FAILED, "SECOND", code, Origin.REMAN, true, code, false, "");
        CloseOut second = closeOuts
                .close(read("d2", truck, TODAY, null, null, List.of(again)), MORNING.plusSeconds(7_200), "Ilze", TODAY)
                .closeOut();
        List<FittedInjector> ofDay = ofDay(truck, 3);
        assertThat(ofDay).extracting(FittedInjector::fitting).containsExactly(1, 2);
        assertThat(ofDay.get(0)).satisfies(row -> {
            assertThat(row.removedOn()).isEqualTo(TODAY);
            assertThat(row.found()).isEqualTo(Found.FAILED);
        });
        assertThat(WarrantyClaims.of(new FleetIndex(fleet()), TODAY))
                .anySatisfy(claim -> assertThat(claim.serial()).isEqualTo(serial(truck, 3)));
        closeOuts.voidIt(second.id(), truck, "it was the harness", MORNING.plusSeconds(9_000), "Anna");
        assertThat(ofDay(truck, 3)).singleElement().satisfies(row -> {
            assertThat(row.serial()).isEqualTo(serial(truck, 3));
            assertThat(row.removedOn()).isNull();
        });
    }

    private List<FittedInjector> ofDay(String truck, int cylinder) {
        return fleet().injectors().stream()
                .filter(row -> row.truck().equals(truck)
                        && row.cylinder() == cylinder
                        && row.fittedOn().equals(TODAY))
                .toList();
    }

    @Test
    void one_that_failed_at_once_is_noted_in_the_same_form() {
        String truck = truck();
        List<FittedInjector> before = open(fleet(), truck);
        double injectors = stock(truck, PART);
        Cylinder plain = fitted(truck, 4, Found.WORN);
        Cylinder tried = new Cylinder(
                4,
                true,
                Found.WORN,
                plain.serial(),
                plain.code(),
                Origin.REMAN,
                true,
                plain.code(),
                false,
                "",
                "dead-4");
        CloseOut made = closeOuts
                .close(read("a1", truck, TODAY, null, null, List.of(tried)), MORNING, "Ilze", TODAY)
                .closeOut();
        assertThat(ofDay(truck, 4)).extracting(FittedInjector::serial).containsExactly("DEAD-4", plain.serial());
        assertThat(made.cylinders().get(0).failedFirst()).isEqualTo("DEAD-4");
        assertThat(stock(truck, PART)).isEqualTo(Math.max(0, injectors - 2));
        assertThat(WarrantyClaims.of(new FleetIndex(fleet()), TODAY))
                .anySatisfy(claim -> assertThat(claim.serial()).isEqualTo("DEAD-4"));
        closeOuts.voidIt(made.id(), truck, "another truck", MORNING.plusSeconds(9_000), "Anna");
        assertThat(open(fleet(), truck)).isEqualTo(before);
        assertThat(ofDay(truck, 4)).isEmpty();
        assertThat(stock(truck, PART)).isEqualTo(injectors);
    }

    @Test
    void what_was_built_on_a_close_out_keeps_it_from_being_voided() {
        String truck = truck();
        CloseOut first = closeOuts
                .close(allEight("built", truck), MORNING, "Ilze", TODAY)
                .closeOut();
        String code = code(truck, 1).replace('Z', 'Q');
        Cylinder again = new Cylinder(1, true, Found.FAILED, "NEXT", code, Origin.REMAN, true, code, false, "");
        closeOuts.close(
                read("later", truck, TODAY, null, null, List.of(again)), MORNING.plusSeconds(60), "Ilze", TODAY);
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class,
                        () -> closeOuts.voidIt(first.id(), truck, "wrong", MORNING.plusSeconds(90), "Anna")))
                .hasMessageContaining("correct the later entries first");
    }
}
