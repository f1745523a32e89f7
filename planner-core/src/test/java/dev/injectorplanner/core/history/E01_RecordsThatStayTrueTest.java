package dev.injectorplanner.core.history;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static dev.injectorplanner.core.testkit.FleetBuilder.V8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.FailureAnswer.Answer;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lives are learned from what was observed, and from nothing else. */
class E01_RecordsThatStayTrueTest {
    private static final LocalDate FITTED = LocalDate.of(2023, 1, 9);

    private static LifeHistory history(FleetBuilder fleet, LocalDate today) {
        FleetIndex index = new FleetIndex(fleet.build());
        return new LifeHistory(index, new FleetUsage(index, 365, today), today);
    }

    private static FittedInjector unknown(String truck, int cylinder) {
        return new FittedInjector(
                truck,
                cylinder,
                INJECTOR,
                null,
                null,
                Origin.UNKNOWN,
                FittedInjector.BEFORE_RECORDS,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** 60 weeks at 1,400 km: 84,000 km since the records began, 300,000 km on the truck. */
    @Test
    void an_injector_of_unknown_history_counts_by_the_trucks_meters_and_never_for_the_life_curve() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").injector("T1", 1, FITTED, 120_000.0);
        fleet.injectors.add(unknown("T1", 2));
        assertThat(history(fleet, TODAY).units()).extracting(UnitLife::cylinder).containsExactly(1);
        assertThat(history(fleet, TODAY).unknownHistory()).isEqualTo(1);
        InjectorAge age = new FleetUsage(new FleetIndex(fleet.build()), 365, TODAY)
                .injectorAges()
                .get(1);
        assertThat(age.fittingKnown()).isFalse();
        assertThat(age.leastKm())
                .isCloseTo(84_000 - 200, within(300.0)); // the first whole day of readings is the second
        assertThat(age.km()).isBetween(age.leastKm(), 300_000.0);
        Plan plan = new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY);
        assertThat(plan.risks()).extracting(risk -> risk.cylinder()).containsExactly(1, 2);
        assertThat(plan.records().sentences())
                .anyMatch(words -> words.startsWith("1 injector was fitted before the records began"));
    }

    /**
     * By hand: with shape 2.5 and scale 400,000 km the mean of ages between 84,000 and 300,000 km, weighted by
     * exp(-(a/400,000)^2.5) at 84, 138, 192, 246 and 300 thousand km (0.9800, 0.9325, 0.8525, 0.7433, 0.6144), is by
     * Simpson's rule 1,840.15 / 10.0026 = 183,970 km.
     */
    @Test
    void its_age_is_weighed_by_survival() {
        FleetBuilder fleet = new FleetBuilder().truck("T1");
        fleet.injectors.add(unknown("T1", 2));
        InjectorAge age = new FleetUsage(new FleetIndex(fleet.build()), 365, TODAY)
                .injectorAges()
                .get(0);
        assertThat(age.km()).isCloseTo(183_970, within(500.0));
    }

    @Test
    void an_injector_that_fails_on_its_first_day_is_a_failure() {
        FleetBuilder fleet = new FleetBuilder().truck("T1");
        LocalDate day = TODAY.minusWeeks(4);
        fleet.injectors.add(new FittedInjector(
                "T1", 3, INJECTOR, "DEAD", null, Origin.NEW, day, null, null, day, null, null, Found.FAILED, 1));
        fleet.injectors.add(new FittedInjector(
                "T1", 3, INJECTOR, "GOOD", null, Origin.NEW, day, null, null, null, null, null, null, 2));
        List<UnitLife> units = history(fleet, TODAY).units();
        assertThat(units).extracting(UnitLife::end).containsExactly(LifeEnd.FAILED, LifeEnd.IN_SERVICE);
        assertThat(units.get(0).km())
                .isEqualTo(new Span(0, 200)); // 1,400 km a week: a day is the most that it can have run
    }

    @Test
    void two_of_one_day_must_follow_each_other() {
        FittedInjector first = new FittedInjector(
                "T1", 3, INJECTOR, null, null, Origin.NEW, TODAY, null, null, TODAY, null, null, Found.FAILED, 1);
        FittedInjector second = new FittedInjector(
                "T1", 3, INJECTOR, null, null, Origin.NEW, TODAY, null, null, null, null, null, null, 2);
        FittedInjector wrongOrder = new FittedInjector(
                "T1", 3, INJECTOR, null, null, Origin.NEW, TODAY, null, null, TODAY, null, null, Found.FAILED, 3);
        assertThat(first.overlaps(second)).isFalse();
        assertThat(second.overlaps(wrongOrder)).isTrue();
        assertThat(first.fittedAt(TODAY)).isFalse();
    }

    private static FleetBuilder since(LocalDate ofDepot, LocalDate ofTruck) {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 180_000);
        Depot north = fleet.depots.get(0);
        fleet.depots.set(
                0,
                new Depot(
                        NORTH,
                        north.name(),
                        north.timeZone(),
                        2,
                        16,
                        north.workDays(),
                        north.labourPerHour(),
                        north.overtimePerHour(),
                        8,
                        ofDepot));
        Truck truck = fleet.trucks.get(0);
        fleet.trucks.set(
                0,
                new Truck(
                        "T1", new Vin(truck.vin().text()), NORTH, V8, null, truck.inServiceOn(), null, null, ofTruck));
        return fleet;
    }

    @Test
    void lives_are_observed_from_the_day_the_records_began() {
        LocalDate depot = TODAY.minusWeeks(20);
        LocalDate truck = TODAY.minusWeeks(10);
        UnitLife byDepot = history(since(depot, null), TODAY).units().get(0);
        assertThat(byDepot.observedFrom()).isEqualTo(depot);
        assertThat(byDepot.km().entry()).isCloseTo(180_000 - 20 * 1_400, within(1.0));
        assertThat(history(since(depot, truck), TODAY).units().get(0).observedFrom())
                .isEqualTo(truck);
        LocalDate beforeReadings = TODAY.minusYears(5);
        assertThat(history(since(beforeReadings, null), TODAY).units().get(0).observedFrom())
                .isEqualTo(TODAY.minusWeeks(60).plusDays(1));
    }

    @Test
    void lives_end_at_the_trucks_last_reading() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 180_000);
        UnitLife later = history(fleet, TODAY.plusWeeks(30)).units().get(0);
        assertThat(later.exitOn()).isEqualTo(TODAY);
        assertThat(later.km().exit()).isCloseTo(180_000, within(1.0));
    }

    @Test
    void the_same_store_planned_at_four_later_days_gives_the_same_life_curves() {
        FleetSnapshot fleet = DemoFleet.make().snapshot();
        List<PartLife> first = lives(fleet, DemoFleet.TODAY);
        assertThat(first).isNotEmpty();
        for (int weeks : new int[] {1, 5, 26, 80}) {
            assertThat(lives(fleet, DemoFleet.TODAY.plusWeeks(weeks))).isEqualTo(first);
        }
    }

    private static List<PartLife> lives(FleetSnapshot fleet, LocalDate today) {
        return new Planner(new EarliestFit())
                .plan(fleet, Policy.standard().withWeeks(4), today)
                .lives();
    }

    /** Eight trucks of eight injectors run 20,000 to 420,000 km and none is known to have failed. */
    private static FleetBuilder longService() {
        FleetBuilder fleet = new FleetBuilder();
        for (int truck = 1; truck <= 8; truck++) {
            fleet.truck("T" + truck).allInjectors("T" + truck, 290_000);
        }
        return fleet;
    }

    /** Exp(-3) is 5 %: Hanley and Lippman-Hand (1983), If nothing goes wrong, is everything all right?, JAMA 249:1743. */
    @Test
    void long_service_without_a_failure_is_asked_about_and_not_believed() {
        FleetBuilder fleet = longService();
        Plan plan = new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY);
        FailureQuestion question = plan.records().questions().get(0);
        assertThat(question.expected()).isGreaterThan(FailureQuestion.ASKED_FROM);
        assertThat(question.words())
                .isEqualTo("No INJ-8 failure since 2025 in 5.4 million km. Is that so, or were failures not recorded?");
        assertThat(plan.lives()).allSatisfy(life -> {
            assertThat(life.source()).isEqualTo(LifeSource.PRIOR);
            assertThat(life.suspensions()).isZero();
        });
        assertThat(plan.records().sentences().get(0)).contains("planner's default life alone");
        double asked = plan.risks().get(0).chance12();

        fleet.answers.add(new FailureAnswer(INJECTOR, Answer.NONE_FAILED, TODAY, "Ilze"));
        Plan believed = new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY);
        assertThat(believed.records().questions()).isEmpty();
        assertThat(believed.lives().get(0).suspensions()).isEqualTo(64);
        assertThat(believed.risks().get(0).chance12()).isLessThan(asked);

        fleet.answers.set(0, new FailureAnswer(INJECTOR, Answer.NOT_RECORDED, TODAY.minusWeeks(2), "Ilze"));
        Plan fromNow = new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY);
        assertThat(fromNow.records().questions()).isEmpty();
        assertThat(fromNow.lives().get(0).suspensions()).isEqualTo(64);
        assertThat(history(fleet, TODAY).units().get(0).observedFrom()).isEqualTo(TODAY.minusWeeks(2));
    }

    @Test
    void short_service_without_a_failure_is_no_question() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 90_000);
        assertThat(history(fleet, TODAY).questions()).isEmpty();
    }
}
