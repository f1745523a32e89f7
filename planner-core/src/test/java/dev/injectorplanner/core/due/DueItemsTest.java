package dev.injectorplanner.core.due;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.usage.FleetUsage;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One truck, 1,400 km and 20 h a week, 300,000 km today; cylinder 3 fitted on 2023-01-09. Horizon to 2026-08-30. */
class DueItemsTest {
    private static final LocalDate UNTIL = LocalDate.of(2026, 8, 30);
    private static final LocalDate FITTED = LocalDate.of(2023, 1, 9);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1").injector("T1", 3, FITTED, 100_000.0);

    private List<DueItem> find() {
        FleetIndex index = new FleetIndex(fleet.build());
        FleetUsage usage = new FleetUsage(index, 365, TODAY);
        return new DueItems(index, new RuleBook(index.fleet()), usage).find(usage.injectorAges(), TODAY, UNTIL);
    }

    private DueItem only() {
        List<DueItem> found = find();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private void truckWarranty(LocalDate until) {
        Truck truck = fleet.trucks.remove(0);
        fleet.trucks.add(new Truck(
                truck.truck(), truck.vin(), truck.depot(), truck.family(), null, truck.inServiceOn(), null, until));
    }

    @Test
    void aHealthyInjectorIsNotDue() {
        assertThat(find()).isEmpty();
    }

    @Test
    void distanceIsDueOnTheDayUsageReachesIt() {
        fleet.rule(RuleKind.DISTANCE_KM, 214_000);
        assertThat(only().by()).isEqualTo(TODAY.plusWeeks(10));
        assertThat(only().action()).isEqualTo(DueAction.REPLACE);
    }

    @Test
    void distanceBeyondTheHorizonIsNot() {
        fleet.rule(RuleKind.DISTANCE_KM, 300_000);
        assertThat(find()).isEmpty();
    }

    @Test
    void theDefaultIsMarkedAsThePlanners() {
        fleet.injectors.clear();
        fleet.injector("T1", 3, LocalDate.of(2019, 4, 1), 295_000.0);
        assertThat(only().kind()).isEqualTo(DueKind.AGE_MONTHS);
        assertThat(only().by()).isEqualTo(LocalDate.of(2026, 4, 1));
        assertThat(only().evidence()).isEqualTo("83 months since fitting on 2019-04-01");
        assertThat(only().limitSource()).isEqualTo("planner default");
    }

    @Test
    void aFamilysRuleGoesBeforeTheRuleForAll() {
        fleet.rule(RuleKind.DISTANCE_KM, 150_000);
        fleet.rules.add(new Rule(V8, RuleKind.DISTANCE_KM, 390_000, null));
        assertThat(find()).isEmpty();
    }

    /** 200,000 km at 1,400 km and 20 h a week are 142.9 weeks; no engine hours noted, so 20 h for each week since fitting. */
    @Test
    void engineHoursByUsage() {
        fleet.rule(RuleKind.ENGINE_HOURS, 3_300);
        assertThat(only().kind()).isEqualTo(DueKind.ENGINE_HOURS);
        assertThat(only().evidence()).startsWith("3,280 engine hours since fitting");
        assertThat(only().by()).isEqualTo(TODAY.plusWeeks(1));
    }

    @Test
    void threeFaultsOfOneCylinderInTheWindow() {
        fleet.fault("T1", TODAY.minusDays(20), "P0269")
                .fault("T1", TODAY.minusDays(9), "P0303")
                .fault("T1", TODAY.minusDays(4), "SPN 653 FMI 7")
                .fault("T1", TODAY.minusDays(2), "P0304");
        assertThat(only().cylinder()).isEqualTo(3);
        assertThat(only().evidence())
                .isEqualTo(
                        "3 faults of the cylinder in the last 30 days (P0269, contribution or balance; P0303, misfire;"
                                + " SPN 653 FMI 7, mechanical system not responding or out of adjustment)");
        assertThat(only().by()).isEqualTo(TODAY.minusDays(4));
    }

    /** An open or shorted circuit is the wiring more often than the coil: common practice, of no one source. */
    @Test
    void circuitFaultsAreCountedApartAndAskForALookAtTheWiring() {
        fleet.fault("T1", TODAY.minusDays(20), "P0203")
                .fault("T1", TODAY.minusDays(9), "SPN 653 FMI 5")
                .fault("T1", TODAY.minusDays(6), "P0269")
                .fault("T1", TODAY.minusDays(5), "P0303");
        assertThat(find()).isEmpty();
        fleet.fault("T1", TODAY.minusDays(4), "P0267");
        assertThat(only().action()).isEqualTo(DueAction.INSPECT);
        assertThat(only().evidence())
                .isEqualTo(
                        "3 circuit faults of the cylinder in the last 30 days (P0203, circuit open; P0267, circuit low;"
                                + " SPN 653 FMI 5, current below normal or open circuit); harness and connector before the injector");
    }

    @Test
    void faultsBeforeTheWindowOrOfTheInjectorBeforeDoNotCount() {
        fleet.fault("T1", TODAY.minusDays(31), "P0269")
                .fault("T1", TODAY.minusDays(9), "P0303")
                .fault("T1", TODAY.minusDays(4), "SPN 653 FMI 7");
        assertThat(find()).isEmpty();
        fleet.injectors.clear();
        fleet.injector("T1", 3, TODAY.minusDays(8), 298_000.0).fault("T1", TODAY.minusDays(3), "P0267");
        assertThat(find()).isEmpty();
    }

    /** The counter of one code runs on: first seen as 5, then as 6, is two occurrences, not eleven, and not six. */
    @Test
    void aCodesCounterIsNotAddedUp() {
        fleet.rule(RuleKind.FAULTS, 3);
        for (int count = 5; count <= 6; count++) {
            LocalDate day = TODAY.minusDays(10 - count);
            fleet.faults.add(new Fault("T1", FleetBuilder.noon(day), new FaultCode("P0269"), null, count, null));
        }
        assertThat(find()).isEmpty();
        fleet.fault("T1", TODAY.minusDays(1), "P0303");
        assertThat(only().evidence()).startsWith("3 faults");
    }

    /** What counts of a cumulative counter is its rise: 40 before the window, 41 in it is one occurrence. */
    @Test
    void aCounterThatWasHighBeforeTheWindowCountsItsRise() {
        for (int day : new int[] {40, 2}) {
            fleet.faults.add(new Fault(
                    "T1",
                    FleetBuilder.noon(TODAY.minusDays(day)),
                    new FaultCode("P0269"),
                    null,
                    day == 40 ? 40 : 41,
                    null));
        }
        assertThat(find()).isEmpty();
    }

    /** Three episodes out of a log are three faults, whatever each of them took. */
    @Test
    void episodesCountByTheirOwnRise() {
        for (int day = 9; day >= 5; day -= 2) {
            Instant at = FleetBuilder.noon(TODAY.minusDays(day));
            assertThat(find()).isEmpty();
            fleet.faults.add(new Fault("T1", at, new FaultCode("SPN 653 FMI 7"), null, 1, null, at.plusSeconds(7_200)));
        }
        assertThat(only().evidence())
                .startsWith("3 faults of the cylinder in the last 30 days (SPN 653 FMI 7, mechanical system");
    }

    @Test
    void balanceEitherWayByTheLatestTest() {
        fleet.test("T1", 3, TODAY.minusDays(30), TestKind.BALANCE, -4.4, "mm3/stroke");
        assertThat(only().evidence())
                .isEqualTo(
                        "balance -4.4 mm3/stroke on 2026-01-31, warm idle; one value over its limit: test again before"
                                + " replacing");
        assertThat(only().limit()).isEqualTo("4 mm3/stroke either way");
        fleet.test("T1", 3, TODAY.minusDays(10), TestKind.BALANCE, -2.0, "mm3/stroke");
        assertThat(find()).isEmpty();
    }

    @Test
    void returnFlowOverItsLimitWithinItsWindow() {
        fleet.test("T1", 3, TODAY.minusDays(89), TestKind.RETURN_FLOW, 60.1, "ml/min");
        assertThat(only().kind()).isEqualTo(DueKind.RETURN_FLOW);
        fleet.tests.clear();
        fleet.test("T1", 3, TODAY.minusDays(90), TestKind.RETURN_FLOW, 60.1, "ml/min");
        assertThat(find()).isEmpty();
    }

    @Test
    void aTestInAnotherUnitIsNotHeldAgainstTheLimit() {
        fleet.test("T1", 3, TODAY.minusDays(10), TestKind.BALANCE, 30, "%");
        assertThat(find()).isEmpty();
    }

    @Test
    void anInjectorIsTestedBeforeItsWarrantyEnds() {
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part(INJECTOR, 40, 0));
        assertThat(only().action()).isEqualTo(DueAction.INSPECT);
        assertThat(only().by()).isEqualTo(LocalDate.of(2026, 5, 9));
        assertThat(only().cylinder()).isEqualTo(3);
    }

    @Test
    void theWarrantyInKmEndsWhenUsageSaysSo() {
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part(INJECTOR, 40, 205_600));
        assertThat(only().by()).isEqualTo(TODAY.plusWeeks(4));
    }

    @Test
    void injectorsFittedTogetherAreOneTest() {
        fleet.injector("T1", 5, FITTED, 100_000.0);
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part(INJECTOR, 40, 0));
        assertThat(only().cylinder()).isNull();
        assertThat(only().evidence()).startsWith("cylinders 3, 5: warranty of part INJ-8 ends on 2026-05-09");
    }

    @Test
    void aWarrantyThatIsOverOrTestedInTimeIsNotDue() {
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part(INJECTOR, 24, 0));
        assertThat(find()).isEmpty();
        fleet.parts.clear();
        fleet.parts.add(FleetBuilder.part(INJECTOR, 39, 0));
        assertThat(find()).hasSize(1);
        fleet.test("T1", 3, TODAY.minusDays(5), TestKind.BALANCE, 0, "mm3/stroke");
        assertThat(find()).isEmpty();
    }

    @Test
    void theTrucksOwnWarranty() {
        truckWarranty(LocalDate.of(2026, 4, 1));
        assertThat(only().evidence()).isEqualTo("warranty of the truck ends on 2026-04-01");
        assertThat(only().cylinder()).isNull();
    }

    @Test
    void anIntervalTaskIsDueAtItsNextMultiple() {
        fleet.intervals.add(new IntervalTask(V8, "valve clearances", 307_000.0, null, null, 3, true));
        assertThat(only().action()).isEqualTo(DueAction.SERVICE);
        assertThat(only().task()).isEqualTo("valve clearances");
        assertThat(only().by()).isEqualTo(TODAY.plusWeeks(5));
        assertThat(only().evidence()).isEqualTo("300,000 km in total, next at 307,000 km");
    }

    /** In service since 2020-01-10: 72 months were over on 2026-01-10, 78 are on 2026-07-10. */
    @Test
    void whicheverOfKmHoursAndMonthsComesFirst() {
        fleet.intervals.add(new IntervalTask(V8, "pump check", 350_000.0, 6_200.0, 6, 1, true));
        assertThat(only().by()).isEqualTo(TODAY.plusWeeks(10));
        fleet.intervals.clear();
        fleet.intervals.add(new IntervalTask(V8, "pump check", 350_000.0, 6_500.0, 6, 1, true));
        assertThat(only().by()).isEqualTo(LocalDate.of(2026, 7, 10));
    }

    @Test
    void aRiskRuleWaits() {
        fleet.rule(RuleKind.RISK, 1);
        assertThat(find()).isEmpty();
    }

    @Test
    void aTruckThatLeavesIsNotDueAfterwards() {
        fleet.rule(RuleKind.DISTANCE_KM, 214_000);
        Truck truck = fleet.trucks.remove(0);
        fleet.trucks.add(new Truck(
                truck.truck(),
                truck.vin(),
                truck.depot(),
                truck.family(),
                null,
                truck.inServiceOn(),
                TODAY.plusDays(30),
                null));
        assertThat(find()).isEmpty();
    }

    @Test
    void mostPressingFirst() {
        fleet.rule(RuleKind.DISTANCE_KM, 190_000);
        fleet.injector("T1", 1, FITTED, 100_000.0);
        fleet.injector("T1", 2, FITTED, 95_000.0);
        assertThat(find()).extracting(DueItem::cylinder).containsExactly(2, 1, 3);
    }
}
