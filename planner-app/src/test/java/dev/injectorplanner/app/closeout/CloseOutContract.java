package dev.injectorplanner.app.closeout;

import static dev.injectorplanner.app.closeout.DemoStore.NOW;
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

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.visit.Visit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Goods-in, kits and close-outs on the demo's fleet, whatever database is below. Each test has a truck of its own. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class CloseOutContract {
    private Application application;
    private CloseOuts closeOuts;
    private SerialisedStock shelf;
    private Kits kits;
    private final List<String> trucks = new ArrayList<>();

    abstract StoreSettings store(Path data) throws Exception;

    @BeforeAll
    void load(@TempDir Path files) throws Exception {
        application = DemoStore.load(store(files.resolve("data")), files.resolve("files"));
        closeOuts = new CloseOuts(application.store());
        shelf = new SerialisedStock(application.store());
        kits = new Kits(application.store(), application.plans());
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

    private double stock(String depot, String part) {
        return fleet().stock().stream()
                .filter(line -> line.depot().equals(depot) && line.part().equals(part))
                .mapToDouble(StockLine::onHand)
                .sum();
    }

    private CloseOuts.Saved close(CloseOutEntry entry) {
        return closeOuts.close(entry, NOW, "Ilze", TODAY);
    }

    /** What is refused; and that nothing at all was changed by it. */
    private Map<String, String> refused(CloseOutEntry entry) {
        FleetSnapshot before = fleet();
        var thrown = catchThrowableOfType(RefusedEntryException.class, () -> close(entry));
        assertThat(thrown).isNotNull();
        assertThat(fleet().injectors()).containsExactlyInAnyOrderElementsOf(before.injectors());
        assertThat(fleet().readings()).hasSameSizeAs(before.readings());
        assertThat(fleet().stock()).containsExactlyInAnyOrderElementsOf(before.stock());
        assertThat(closeOuts.ofTruck(entry.truck()))
                .noneMatch(row -> row.formKey().equals(entry.formKey()));
        Map<String, String> words = new java.util.TreeMap<>();
        thrown.problems().forEach(problem -> words.put(problem.field(), problem.words()));
        assertThat(words.values()).allMatch(sentence -> sentence.matches("(?s).+\\. Fix: .+\\."));
        return words;
    }

    private static Cylinder with(Cylinder from, String serial, String code, boolean programmed, String readBack) {
        return new Cylinder(
                from.cylinder(), true, from.found(), serial, code, from.origin(), programmed, readBack, false, "");
    }

    @Test
    void all_eight_of_a_set_at_once() {
        String truck = truck();
        String depot = depotOf(truck);
        List<FittedInjector> old = open(fleet(), truck);
        double seals = stock(depot, "KX-1001");
        double injectors = stock(depot, PART);
        CloseOuts.Saved saved = close(allEight("eight", truck));
        assertThat(saved.again()).isFalse();
        assertThat(saved.closeOut().fitted()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        List<FittedInjector> now = open(fleet(), truck);
        assertThat(now).hasSize(8).allSatisfy(row -> {
            assertThat(row.fittedOn()).isEqualTo(TODAY);
            assertThat(row.origin()).isEqualTo(Origin.REMAN);
            assertThat(row.serial()).isEqualTo(serial(truck, row.cylinder()));
            assertThat(row.calibrationCode()).isEqualTo(code(truck, row.cylinder()));
        });
        for (FittedInjector each : old) {
            assertThat(fleet().injectors())
                    .contains(Lives.ended(each, TODAY, null, null, Found.WORN))
                    .doesNotContain(each);
        }
        assertThat(stock(depot, "KX-1001")).isEqualTo(Math.max(0, seals - 8));
        assertThat(stock(depot, PART)).isEqualTo(Math.max(0, injectors - 8));
        assertThat(closeOuts.ofTruck(truck)).containsExactly(saved.closeOut());
        assertThat(saved.closeOut().cylinders()).allSatisfy(done -> {
            assertThat(done.programmed()).isTrue();
            assertThat(done.readBack()).isEqualTo(CloseOut.ReadBack.TYPED);
        });
    }

    @Test
    void a_form_that_the_network_sends_twice_is_kept_once() {
        String truck = truck();
        CloseOuts.Saved first = close(allEight("twice", truck));
        FleetSnapshot after = fleet();
        CloseOuts.Saved second = closeOuts.close(allEight("twice", truck), NOW.plusSeconds(90), "Ilze", TODAY);
        assertThat(second.again()).isTrue();
        assertThat(second.closeOut()).isEqualTo(first.closeOut());
        assertThat(fleet().stock()).containsExactlyInAnyOrderElementsOf(after.stock());
        assertThat(closeOuts.ofTruck(truck)).hasSize(1);
    }

    @Test
    void the_same_form_at_the_same_moment_from_two_sides_is_kept_once() throws Exception {
        String truck = truck();
        ExecutorService two = Executors.newFixedThreadPool(2);
        Callable<CloseOuts.Saved> task = () -> close(allEight("race", truck));
        List<Future<CloseOuts.Saved>> both = two.invokeAll(List.of(task, task));
        assertThat(List.of(both.get(0).get().again(), both.get(1).get().again()))
                .containsExactlyInAnyOrder(true, false);
        two.shutdown();
        assertThat(closeOuts.ofTruck(truck)).hasSize(1);
    }

    @Test
    void codes_that_are_double_malformed_or_read_back_different_are_refused() {
        String truck = truck();
        Cylinder one = fitted(truck, 1, Found.FAILED);
        Cylinder two = with(fitted(truck, 2, Found.WORN), "N2", one.code(), true, one.code());
        Cylinder three = with(fitted(truck, 3, Found.WORN), "N3", "TOO-SHORT", true, "TOO-SHORT");
        Cylinder four = with(fitted(truck, 4, Found.WORN), "N4", code(truck, 4), true, code(truck, 5));
        Cylinder five = with(fitted(truck, 5, Found.WORN), "N5", code(truck, 5), false, "");
        Map<String, String> words = refused(entry("bad codes", truck, List.of(one, two, three, four, five)));
        assertThat(words).containsOnlyKeys("c2.code", "c3.code", "c4.readBack", "c5.programmed", "c5.readBack");
        assertThat(words.get("c2.code"))
                .isEqualTo("Cylinder 2, code \"" + one.code()
                        + "\": is already entered under cylinder 1. Fix: read both injectors again.");
        assertThat(words.get("c3.code")).contains("does not match the pattern of part KV-8140, [A-Z0-9]{16}");
        assertThat(words.get("c4.readBack")).contains("differs from the code");
    }

    /** An injector in another truck, of the same depot or of another. */
    private FittedInjector of(String truck, boolean sameDepot) {
        String other = trucks.stream()
                .filter(each -> depotOf(each).equals(depotOf(truck)) == sameDepot)
                .findFirst()
                .orElseThrow();
        return open(fleet(), other).get(0);
    }

    private String elsewhere(String truck, FittedInjector other) {
        String code = String.valueOf(other.calibrationCode());
        Map<String, String> words = refused(entry(
                "elsewhere",
                truck,
                List.of(with(fitted(truck, 1, Found.WORN), String.valueOf(other.serial()), code, true, code))));
        assertThat(words).containsOnlyKeys("c1.serial", "c1.code");
        return String.join(" ", words.values());
    }

    @Test
    void an_injector_that_is_in_another_engine_is_refused() {
        String truck = truck();
        FittedInjector near = of(truck, true);
        assertThat(elsewhere(truck, near))
                .contains("is fitted in truck " + near.truck() + ", cylinder " + near.cylinder() + ", since ");
        FittedInjector far = of(truck, false);
        assertThat(elsewhere(truck, far))
                .contains("is fitted in a truck of another depot.")
                .doesNotContain(far.truck());
        FittedInjector own = open(fleet(), truck).get(0);
        assertThat(refused(entry(
                        "itself",
                        truck,
                        List.of(with(
                                fitted(truck, 1, Found.WORN),
                                String.valueOf(own.serial()),
                                code(truck, 1),
                                true,
                                code(truck, 1))))))
                .hasEntrySatisfying(
                        "c1.serial", word -> assertThat(word).contains("is the one that was in this cylinder"));
    }

    @Test
    void a_label_fills_serial_and_code_and_that_of_another_place_is_refused() {
        String truck = truck();
        String label = truck + ";1;" + serial(truck, 1) + ";" + code(truck, 1);
        Cylinder scanned = with(
                fitted(truck, 1, Found.HEALTHY), "", label, true, code(truck, 1).toLowerCase());
        assertThat(refused(entry(
                        "wrong cylinder",
                        truck,
                        List.of(with(fitted(truck, 2, Found.WORN), "", label, true, code(truck, 1))))))
                .containsEntry(
                        "c2.code",
                        "Cylinder 2, the scanned label is for truck " + truck
                                + ", cylinder 1. Fix: fit the injector labelled truck " + truck
                                + ", cylinder 2.");
        assertThat(refused(entry(
                        "wrong truck",
                        truck,
                        List.of(with(fitted(truck, 1, Found.WORN), "T999;1;S1;" + code(truck, 1), "", true, "")))))
                .hasEntrySatisfying("c1.serial", word -> assertThat(word).contains("is for truck T999, cylinder 1"));
        close(entry("label", truck, List.of(scanned)));
        assertThat(open(fleet(), truck).get(0)).satisfies(row -> {
            assertThat(row.serial()).isEqualTo(serial(truck, 1));
            assertThat(row.calibrationCode()).isEqualTo(code(truck, 1));
        });
    }

    @Test
    void what_was_not_done_needs_a_reason_and_keeps_its_injector() {
        String truck = truck();
        List<FittedInjector> before = open(fleet(), truck);
        Cylinder left = new Cylinder(2, false, null, "", "", null, false, "", false, "");
        assertThat(refused(entry("no reason", truck, List.of(fitted(truck, 1, Found.WORN), left))))
                .containsOnlyKeys("c2.reason");
        Cylinder told = new Cylinder(2, false, null, "", "", null, false, "", false, "stud broke");
        close(entry("reason", truck, List.of(fitted(truck, 1, Found.WORN), told)));
        assertThat(open(fleet(), truck)).contains(before.get(1)).doesNotContain(before.get(0));
        assertThat(closeOuts.ofTruck(truck).get(0).cylinders().get(1).reason()).isEqualTo("stud broke");
    }

    @Test
    void meters_tests_and_days_are_held_against_what_is_known() {
        String truck = truck();
        double last = fleet().readings().stream()
                .filter(row -> row.truck().equals(truck) && row.odometerKm() != null)
                .max(Comparator.comparing(row -> row.takenAt()))
                .orElseThrow()
                .odometerKm();
        CloseOutEntry base = entry("meters", truck, List.of(fitted(truck, 1, Found.FAILED)));
        assertThat(refused(meters(base, last - 5_000, TODAY.plusDays(1), false)))
                .containsOnlyKeys("odometer", "doneOn")
                .hasEntrySatisfying("odometer", word -> assertThat(word).contains("is below "));
        int readings = fleet().readings().size();
        close(meters(base, last + 100, TODAY, false));
        assertThat(fleet().readings()).hasSize(readings + 1);
        assertThat(open(fleet(), truck).get(0).odometerKm()).isEqualTo(last + 100);
        assertThat(fleet().injectors())
                .filteredOn(row -> row.truck().equals(truck) && TODAY.equals(row.removedOn()))
                .singleElement()
                .satisfies(row -> assertThat(row.removedOdometerKm()).isEqualTo(last + 100));
        assertThat(fleet().cylinderTests())
                .filteredOn(row -> row.truck().equals(truck) && row.testedAt().equals(NOW))
                .singleElement()
                .satisfies(row -> assertThat(row.value()).isEqualTo(0.4));
    }

    private static CloseOutEntry meters(CloseOutEntry from, double km, java.time.LocalDate on, boolean replaced) {
        return new CloseOutEntry(
                from.formKey(),
                from.truck(),
                from.week(),
                on,
                from.labourHours(),
                km,
                null,
                replaced,
                "",
                List.of(),
                null,
                from.cylinders(),
                List.of(),
                List.of(new CloseOutEntry.Test(1, TestKind.BALANCE, 0.4, "mm3/stroke", "warm idle")),
                null);
    }

    @Test
    void goods_in_checks_serials_and_codes_and_stock_goes_up() {
        String depot = depotOf(trucks.get(0));
        double before = stock(depot, PART);
        FittedInjector inEngine = open(fleet(), trucks.get(0)).get(0);
        var bad = new GoodsIn(
                depot,
                PART,
                Origin.REMAN,
                List.of(
                        new GoodsIn.Unit("g1", "GOODSIN000000001"),
                        new GoodsIn.Unit("G1", "GOODSIN000000001"),
                        new GoodsIn.Unit("G3", "short"),
                        new GoodsIn.Unit("", "GOODSIN000000004"),
                        new GoodsIn.Unit("G5", String.valueOf(inEngine.calibrationCode()))));
        var thrown = catchThrowableOfType(RefusedEntryException.class, () -> shelf.receive(bad, NOW, "Ilze"));
        assertThat(thrown.problems())
                .extracting(EntryProblem::field)
                .containsExactly("u1.serial", "u1.code", "u2.code", "u3.serial", "u4.code");
        assertThat(stock(depot, PART)).isEqualTo(before);
        assertThat(shelf.list(depot)).noneMatch(row -> row.serial().startsWith("G"));
        var good = new GoodsIn(
                        depot,
                        PART,
                        Origin.REMAN,
                        List.of(
                                new GoodsIn.Unit(" g1", "goodsin0 0000 0001"),
                                bad.units().get(0)))
                .units();
        assertThat(shelf.receive(new GoodsIn(depot, PART, Origin.REMAN, good.subList(0, 1)), NOW, "Ilze"))
                .isEqualTo(1);
        assertThat(stock(depot, PART)).isEqualTo(before + 1);
        var twice = catchThrowableOfType(
                RefusedEntryException.class,
                () -> shelf.receive(new GoodsIn(depot, PART, Origin.REMAN, good.subList(1, 2)), NOW, "Ilze"));
        assertThat(twice.problems().get(0).words())
                .isEqualTo("Injector 1, serial \"G1\": is in stock at " + depot + " already (serial G1, free). Fix:"
                        + " read it on the injector again, or correct the other one first.");
        StockInjector there = shelf.list(depot).stream()
                .filter(row -> row.serial().equals("G1"))
                .findFirst()
                .orElseThrow();
        assertThat(there.code()).isEqualTo("GOODSIN000000001");
        shelf.takeOff(depot, there.id(), "counted short", NOW, "Ilze");
        assertThat(stock(depot, PART)).isEqualTo(before);
        assertThat(shelf.receive(new GoodsIn(depot, PART, Origin.NEW, good.subList(1, 2)), NOW, "Ilze"))
                .isEqualTo(1);
    }

    @Test
    void from_the_shelf_through_the_kit_into_the_engine_and_out_of_the_next_plan() {
        Policy policy = Policy.standard().withWeeks(8);
        String depot = "Brennick";
        Plan plan = application
                .planning()
                .planAndKeep("before", NOW.minusSeconds(60), TODAY, policy, depot)
                .plan();
        Visit visit = plan.visits().stream()
                .filter(each -> each.family().equals("V8-140") && trucks.contains(each.truck()))
                .max(Comparator.comparing(each -> each.cylinders().size()))
                .orElseThrow();
        String truck = visit.truck();
        trucks.remove(truck);
        List<GoodsIn.Unit> units = visit.cylinders().stream()
                .map(cylinder -> new GoodsIn.Unit(serial(truck, cylinder), code(truck, cylinder)))
                .toList();
        shelf.receive(new GoodsIn(depot, PART, Origin.REMAN, units), NOW, "Ilze");
        assertThat(kits.fill(depot, truck, NOW, "Ilze")).isZero();
        Map<Integer, StockInjector> kit = shelf.kitOf(truck);
        assertThat(kit.keySet()).containsExactlyInAnyOrderElementsOf(visit.cylinders());
        int first = visit.cylinders().get(0);
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class,
                        () -> kits.bind(depot, kit.get(first).id(), truck, first, NOW, "Ilze")))
                .hasMessageContaining("is allocated to truck " + truck);
        kits.release(depot, kit.get(first).id(), NOW, "Ilze");
        kits.bind(depot, kit.get(first).id(), truck, first, NOW, "Ilze");
        application.holds().hold(new Hold(truck, Hold.Kind.PIN, visit.week(), NOW, "Ilze", ""));
        application.holds().confirm(Map.of(truck, visit.week()), NOW, "Ilze");
        FittedInjector young = open(fleet(), truck).stream()
                .filter(row -> visit.cylinders().contains(row.cylinder()))
                .max(Comparator.comparing(FittedInjector::fittedOn))
                .orElseThrow();
        List<Cylinder> cylinders = visit.cylinders().stream()
                .map(cylinder -> scanned(
                        kit.get(cylinder), truck, cylinder, cylinder == young.cylinder() ? Found.FAILED : Found.WORN))
                .toList();
        CloseOutEntry entry = entry("through", truck, cylinders);
        close(new CloseOutEntry(
                entry.formKey(),
                truck,
                visit.week().toString(),
                TODAY,
                entry.labourHours(),
                null,
                null,
                false,
                "",
                visit.tasks(),
                null,
                cylinders,
                List.of(),
                List.of(),
                null));
        assertThat(shelf.list(depot)).noneMatch(row -> truck.equals(row.truck()));
        assertThat(closeOuts.since(depot, NOW.minusSeconds(60))).containsKey(truck);
        assertThat(application.holds().holds(depot, IsoWeek.of(TODAY)))
                .satisfies(holds -> assertThat(holds.pins()).doesNotContainKey(truck))
                .satisfies(holds -> assertThat(holds.confirmed()).doesNotContainKey(truck));
        Plan next = application.planning().plan(TODAY, policy, depot).plan();
        assertThat(next.visits())
                .filteredOn(each -> each.truck().equals(truck))
                .allSatisfy(each -> assertThat(each.cylinders()).doesNotContainAnyElementsOf(visit.cylinders()));
        assertThat(next.cores())
                .filteredOn(
                        core -> core.truck().equals(truck) && core.fittedOn().equals(TODAY))
                .hasSameSizeAs(visit.cylinders())
                .allSatisfy(core -> assertThat(core.lastDay()).isEqualTo(TODAY.plusDays(45)))
                .anySatisfy(core -> assertThat(core.oldSerial()).isEqualTo(young.serial()));
        boolean inWarranty = !TODAY.isAfter(young.fittedOn().plusMonths(12));
        assertThat(next.claims().stream()
                        .anyMatch(claim -> claim.truck().equals(truck)
                                && claim.removedOn().equals(TODAY)
                                && claim.cylinder() == young.cylinder()))
                .isEqualTo(inWarranty);
    }

    private static Cylinder scanned(StockInjector from, String truck, int cylinder, Found found) {
        String label = truck + ";" + cylinder + ";" + from.serial() + ";" + from.code();
        return new Cylinder(cylinder, true, found, "", label, null, true, "", true, "");
    }

    @Test
    void a_failure_inside_its_warranty_opens_a_claim() {
        FittedInjector young = fleet().injectors().stream()
                .filter(row -> trucks.contains(row.truck())
                        && row.removedOn() == null
                        && row.fittedOn().isAfter(TODAY.minusMonths(11)))
                .findFirst()
                .orElseThrow();
        trucks.remove(young.truck());
        close(entry("claim", young.truck(), List.of(fitted(young.truck(), young.cylinder(), Found.FAILED))));
        Plan next = application
                .planning()
                .plan(TODAY, Policy.standard().withWeeks(8), depotOf(young.truck()))
                .plan();
        assertThat(next.claims())
                .anySatisfy(claim -> assertThat(List.of(claim.truck(), claim.cylinder(), claim.removedOn()))
                        .isEqualTo(List.of(young.truck(), young.cylinder(), TODAY)));
    }

    @Test
    void a_correction_takes_the_place_of_what_it_corrects_and_both_stay_readable() {
        String truck = truck();
        String depot = depotOf(truck);
        List<FittedInjector> before = open(fleet(), truck);
        double seals = stock(depot, "KX-1001");
        CloseOut first = close(allEight("first", truck)).closeOut();
        Cylinder one = fitted(truck, 1, Found.FAILED);
        Cylinder two = new Cylinder(2, false, null, "", "", null, false, "", false, "was never opened");
        CloseOutEntry entry = entry("second", truck, List.of(one, two));
        CloseOut second = closeOuts
                .correct(first.id(), entry, "wrong truck's sheet", NOW.plusSeconds(600), "Anna", TODAY)
                .closeOut();
        List<FittedInjector> now = open(fleet(), truck);
        assertThat(now.get(0).serial()).isEqualTo(serial(truck, 1));
        assertThat(now.subList(1, 8)).isEqualTo(before.subList(1, 8));
        assertThat(fleet().injectors()).contains(Lives.ended(before.get(0), TODAY, null, null, Found.FAILED));
        assertThat(stock(depot, "KX-1001")).isEqualTo(Math.max(0, seals - 2));
        assertThat(closeOuts.ofTruck(truck)).extracting(CloseOut::version).containsExactly(2, 1);
        assertThat(closeOuts.find(first.id()))
                .hasValueSatisfying(row -> assertThat(row.correctedBy()).isEqualTo(second.id()));
        assertThat(closeOuts.find(first.id()).orElseThrow().fitted()).hasSize(8);
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class,
                        () -> closeOuts.correct(
                                first.id(), entry("third", truck, List.of()), "again", NOW, "Anna", TODAY)))
                .hasMessageContaining("is out of date");
    }

    @Test
    void a_correction_that_is_refused_leaves_all_as_it_was() {
        String truck = truck();
        CloseOut first = close(allEight("whole", truck)).closeOut();
        FleetSnapshot before = fleet();
        Cylinder bad = with(fitted(truck, 1, Found.WORN), "N1", "nonsense", true, "nonsense");
        assertThat(catchThrowableOfType(
                        RefusedEntryException.class,
                        () -> closeOuts.correct(
                                first.id(), entry("half", truck, List.of(bad)), "typing", NOW, "Anna", TODAY)))
                .isNotNull();
        assertThat(fleet().injectors()).containsExactlyInAnyOrderElementsOf(before.injectors());
        assertThat(fleet().stock()).containsExactlyInAnyOrderElementsOf(before.stock());
        assertThat(closeOuts.ofTruck(truck)).containsExactly(first);
    }
}
