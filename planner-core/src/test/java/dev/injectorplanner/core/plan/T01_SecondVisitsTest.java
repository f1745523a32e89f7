package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A truck comes twice where the second visit pays: a test while the kit is on its way, a service that does not ride along. */
class T01_SecondVisitsTest {
    private static final IsoWeek W10 = IsoWeek.of(TODAY);

    /** Two faults of cylinder 3, all injectors beyond the site's limit, nothing in stock and no shipment for five weeks. */
    private static FleetBuilder waitingForParts() {
        FleetBuilder fleet = new FleetBuilder()
                .truck("T1")
                .allInjectors("T1", 190_000)
                .rule(RuleKind.DISTANCE_KM, 200_000)
                .fault("T1", TODAY.minusDays(9), "SPN 653 FMI 7")
                .fault("T1", TODAY.minusDays(4), "SPN 653 FMI 7");
        EngineFamily usual = fleet.families.get(0);
        fleet.families.set(
                0,
                new EngineFamily(
                        V8,
                        usual.cylinders(),
                        usual.banks(),
                        usual.firingOrder(),
                        usual.cylinderHours(),
                        usual.coolantLitres(),
                        usual.glycolPercent(),
                        usual.injectorPart(),
                        new BigDecimal("18000")));
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            fleet.test("T1", cylinder, TODAY.minusWeeks(20), TestKind.RETURN_FLOW, 30, "ml/min");
            fleet.test("T1", cylinder, TODAY.minusWeeks(20), TestKind.BALANCE, 1, "mm3/stroke");
        }
        return fleet;
    }

    private static Policy noExpress() {
        Policy usual = Policy.standard();
        return usual.withOrders(usual.orders().withExpediteDays(35));
    }

    @Test
    void aTestNowAndTheInjectorsWhenThePartsAreThere() {
        Plan plan = PlanOf.fleet(waitingForParts().build(), noExpress());
        assertThat(plan.visits()).hasSize(2);
        Visit test = plan.visits().get(0);
        Visit injectors = plan.visits().get(1);
        assertThat(test.week()).isEqualTo(W10);
        assertThat(test.inspection()).isTrue();
        assertThat(test.cylinders()).isEmpty();
        assertThat(test.why()).startsWith("Injector test before its visit in " + injectors.week());
        assertThat(injectors.cylinders()).contains(3);
        assertThat(injectors.week()).isGreaterThan(W10.plus(1));
        assertThat(plan.isMain(injectors)).isTrue();
        assertThat(plan.isMain(test)).isFalse();
        assertThat(plan.days().get(0).days().laid())
                .singleElement()
                .satisfies(laid ->
                        assertThat(IsoWeek.of(laid.start().toLocalDate())).isEqualTo(W10));
        assertThat(plan.loads().get(0).visits()).isEqualTo(1);
    }

    @Test
    void withThePartsInStockOneVisitDoes() {
        FleetBuilder fleet = waitingForParts();
        fleet.onShelf(8);
        Plan plan = PlanOf.fleet(fleet.build(), noExpress());
        assertThat(plan.visits()).singleElement().satisfies(visit -> {
            assertThat(visit.week()).isEqualTo(W10);
            assertThat(visit.cylinders()).contains(3);
        });
    }

    @Test
    void aServiceThatDoesNotRideAlongGetsAVisitOfItsOwn() {
        FleetBuilder fleet =
                new FleetBuilder().truck("T1").allInjectors("T1", 215_000).rule(RuleKind.DISTANCE_KM, 200_000);
        fleet.onShelf(8);
        fleet.intervals.add(new IntervalTask(V8, "tank cleaned", 101_000.0, null, null, 3, false));
        Plan plan = PlanOf.fleet(fleet.build());
        assertThat(plan.visits()).extracting(Visit::tasks).contains(List.of("tank cleaned"));
        assertThat(plan.visits())
                .filteredOn(plan::isMain)
                .singleElement()
                .satisfies(visit -> assertThat(visit.cylinders()).isNotEmpty());
        assertThat(plan.unplanned()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void secondVisitsHoldNoCylindersAndTheirHoursAreCounted(long seed) {
        Plan plan = PlanOf.fleet(
                new FleetGenerator(DemoFleet.ofSize(60, seed)).generate().snapshot());
        List<Visit> seconds = plan.visits().stream()
                .filter(visit -> !visit.diagnosis() && !plan.isMain(visit))
                .toList();
        assertThat(seconds).allMatch(visit -> visit.cylinders().isEmpty() && visit.labourHours() > 0);
        assertThat(plan.visits())
                .extracting(visit -> visit.truck() + " " + visit.week() + " " + visit.diagnosis())
                .doesNotHaveDuplicates();
        for (WeekLoad load : plan.loads()) {
            double booked = plan.visits().stream()
                    .filter(visit ->
                            visit.depot().equals(load.depot()) && visit.week().equals(load.week()))
                    .mapToDouble(Visit::labourHours)
                    .sum();
            assertThat(load.labourHours()).isCloseTo(booked, within(1e-3));
        }
        Double gap = plan.cost().gap();
        assertThat(gap).isNotNull().isNotNegative();
    }
}
