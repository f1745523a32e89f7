package dev.injectorplanner.core.risk;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Truck T1: eight injectors of 100,000 km, 1,400 km a week; planner defaults for delay, sensitivity and silent share. */
class F03_InspectionDatesTest {
    private static final LocalDate FAR = TODAY.plusYears(2);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private void tested(LocalDate day, int from, int to) {
        for (int cylinder = from; cylinder <= to; cylinder++) {
            fleet.test("T1", cylinder, day, TestKind.BALANCE, 0.5, "mm3/stroke");
        }
    }

    private Optional<TruckInspection> find(double limit) {
        Forecasted now = Forecasted.on(fleet.build(), TODAY);
        return new InspectionDates(now.risk(), TODAY).find(now.usage().of("T1"), now.ages(), limit, FAR);
    }

    /**
     * Against a plain sum over defects in steps of 10 km: each of eight injectors gets half a silent defect for each failure
     * its life would bring 20,000 km later; a defect fails by an exponential delay of 20,000 km; the test ten weeks ago, at
     * 86,000 km, missed one in five of those that were there.
     */
    @Test
    void theChanceIsThatOfTheDelayTimeModel() {
        fleet.allInjectors("T1", 100_000);
        tested(TODAY.minusWeeks(10), 1, 8);
        WeibullLife life = Forecasted.on(fleet.build(), TODAY)
                .risk()
                .lives()
                .of(FleetBuilder.INJECTOR, Origin.NEW)
                .life();
        double failures = 0;
        double tested = 86_000;
        for (double age = 5; age < 100_000; age += 10) {
            double defects = 8 * 0.5 * life.hazard(age + 20_000) * 10;
            double failsByNow = 1 - Math.exp(-(100_000 - age) / 20_000);
            double failedBefore = age < tested ? 1 - Math.exp(-(tested - age) / 20_000) : 0;
            failures += defects * (failsByNow - failedBefore) * (age < tested ? 0.2 : 1);
        }
        TruckInspection inspection = find(0.05).orElseThrow();
        assertThat(inspection.sinceKm()).isCloseTo(14_000, within(1.0));
        assertThat(inspection.chanceNow()).isCloseTo(1 - Math.exp(-failures), within(1e-4));
        assertThat(inspection.lastTestOn()).isEqualTo(TODAY.minusWeeks(10));
        assertThat(inspection.estimated()).isFalse();
    }

    @Test
    void aHigherLimitOrALaterTestGivesMoreTime() {
        fleet.allInjectors("T1", 100_000);
        tested(TODAY.minusWeeks(10), 1, 8);
        LocalDate by = find(0.05).orElseThrow().by();
        assertThat(by).isAfter(TODAY);
        assertThat(find(0.10).orElseThrow().by()).isAfter(by);
        assertThat(find(0.01).orElseThrow().by()).isBefore(by);
        tested(TODAY.minusWeeks(2), 1, 8);
        assertThat(find(0.05).orElseThrow().by()).isAfter(by);
    }

    @Test
    void aTestOfHalfTheEngineIsNoTestOfTheTruck() {
        fleet.allInjectors("T1", 100_000);
        tested(TODAY.minusWeeks(10), 1, 8);
        LocalDate by = find(0.05).orElseThrow().by();
        tested(TODAY.minusWeeks(2), 1, 4);
        assertThat(find(0.05).orElseThrow().by()).isEqualTo(by);
    }

    @Test
    void injectorsFittedAfterTheLastTestCountFromTheirFitting() {
        fleet.allInjectors("T1", 100_000);
        tested(TODAY.minusWeeks(10), 1, 8);
        LocalDate by = find(0.05).orElseThrow().by();
        fleet.injectors.removeIf(row -> row.cylinder() <= 4);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            fleet.injector("T1", cylinder, TODAY.minusWeeks(4), 294_400.0);
        }
        assertThat(find(0.05).orElseThrow().by()).isAfter(by);
    }

    @Test
    void aTruckNeverTestedIsOverdueWhereOthersAreTested() {
        fleet.allInjectors("T1", 100_000);
        assertThat(find(0.05)).as("no test on record in the fleet").isEmpty();
        fleet.truck("T2").allInjectors("T2", 100_000);
        fleet.test("T2", 1, TODAY.minusWeeks(3), TestKind.BALANCE, 0.5, "mm3/stroke");
        TruckInspection inspection = find(0.05).orElseThrow();
        assertThat(inspection.lastTestOn()).isNull();
        assertThat(inspection.sinceKm()).isCloseTo(100_000, within(1.0));
        assertThat(inspection.by()).isBefore(TODAY);
    }

    /** The demo: not every truck every week, and not none. */
    @Test
    void theDemoHasASensibleNumberOfInspections() {
        Forecasted demo = Forecasted.on(DemoFleet.make().snapshot(), DemoFleet.TODAY);
        InspectionDates dates = new InspectionDates(demo.risk(), DemoFleet.TODAY);
        LocalDate until = DemoFleet.TODAY.plusWeeks(26);
        long due = demo.fleet().trucks().stream()
                .filter(truck -> dates.find(
                                demo.usage().of(truck.truck()),
                                demo.ages().stream()
                                        .filter(age -> age.truck().equals(truck.truck()))
                                        .toList(),
                                0.05,
                                until)
                        .isPresent())
                .count();
        assertThat(due).isBetween(8L, 50L);
    }

    @Test
    void aBestIntervalFollowsFromCosts() {
        Forecasted demo = Forecasted.on(DemoFleet.make().snapshot(), DemoFleet.TODAY);
        ReplacementCosts costs = new ReplacementCosts(demo.index(), demo.risk(), F02_RiskLawsTest.VISITS, 1);
        FamilyInspection cheap = FamilyInspection.of(demo.index(), demo.risk(), costs, 0.05).stream()
                .filter(row -> row.family().equals("V8-140"))
                .findFirst()
                .orElseThrow();
        FamilyInspection dear = FamilyInspection.of(demo.index(), demo.risk(), costs, 0.1).stream()
                .filter(row -> row.family().equals("V8-140"))
                .findFirst()
                .orElseThrow();
        assertThat(cheap.policy().interval()).isBetween(5_000.0, 80_000.0);
        assertThat(dear.policy().interval()).isGreaterThan(cheap.policy().interval());
        assertThat(cheap.policy().costRate()).isLessThan(dear.policy().costRate());
        assertThat(dear.policy().costRate()).isLessThan(dear.policy().costRateWithoutTests());
    }
}
