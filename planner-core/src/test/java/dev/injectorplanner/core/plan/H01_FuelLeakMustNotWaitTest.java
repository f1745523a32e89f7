package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.due.SafetyLimit;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A truck with an active fuel leak or a fault of its fuel pressure comes in by a date. Codes: SAE J2012 / ISO 15031-6
 * (P0087, P0088, P008A, P008B, P0093, P0094) and SAE J1939-71 / -73 (SPN 94, 157, 1239, 1240; FMI 0, 1, 16, 18), from memory.
 * Three days and a window of thirty are common practice.
 */
class H01_FuelLeakMustNotWaitTest {
    private static final IsoWeek THIS_WEEK = new IsoWeek(2026, 10);

    private final FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 10_000);

    private List<DueItem> safety(Plan plan) {
        return plan.dueItems().stream()
                .filter(item -> item.kind() == DueKind.SAFETY)
                .toList();
    }

    @Test
    void aLeakSeenYesterdayBringsTheTruckInThisWeek() {
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0093").build());
        DueItem leak = plan.dueItems().get(0);
        assertThat(leak.kind()).isEqualTo(DueKind.SAFETY);
        assertThat(leak.by()).isEqualTo(TODAY.plusDays(2));
        assertThat(leak.evidence())
                .isEqualTo("large fuel leak (P0093) reported on 2026-03-01, no injector fitted since");
        assertThat(leak.limit()).startsWith("safety: in the bay within 3 days");
        assertThat(leak.limitSource()).isEqualTo("planner default");
        Visit visit = plan.visits().get(0);
        assertThat(visit.week()).isEqualTo(THIS_WEEK);
        assertThat(visit.inspection()).isTrue();
        assertThat(visit.dueItems().get(0)).isEqualTo(leak);
        assertThat(plan.cost().brokenWishes()).isEmpty();
    }

    @Test
    void aRuleOfTheSiteSaysHowSoonForItsFamily() {
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0093")
                .rule(RuleKind.SAFETY, 1)
                .build());
        DueItem leak = safety(plan).get(0);
        assertThat(leak.by()).isEqualTo(TODAY);
        assertThat(leak.limit()).startsWith("safety: in the bay within 1 day of");
        assertThat(leak.limitSource()).isEqualTo("site rule");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P0087",
                "P0088",
                "P008A",
                "P008B",
                "P0093",
                "P0094",
                "SPN 157 FMI 0",
                "SPN 157 FMI 1",
                "SPN 157 FMI 16",
                "SPN 157 FMI 18",
                "SPN 94 FMI 1",
                "SPN 94 FMI 18",
                "SPN 1239 FMI 31",
                "SPN 1240 FMI 0"
            })
    void codesThatMustNotWait(String code) {
        assertThat(safety(
                        PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(2), code).build())))
                .hasSize(1);
    }

    /** Least severe levels, the sensor's own faults and an injector's circuit ask for no such haste. */
    @ParameterizedTest
    @ValueSource(
            strings = {"SPN 157 FMI 15", "SPN 157 FMI 17", "SPN 157 FMI 3", "P0191", "P0193", "P0201", "SPN 651 FMI 5"})
    void codesThatMayWait(String code) {
        assertThat(safety(
                        PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(2), code).build())))
                .isEmpty();
    }

    @Test
    void anInjectorFittedOnALaterDayIsTheCure() {
        fleet.fault("T1", TODAY.minusDays(9), "P0093");
        fleet.injectors.removeIf(row -> row.cylinder() == 3);
        fleet.injector("T1", 3, TODAY.minusDays(8), 298_500.0);
        assertThat(safety(PlanOf.fleet(fleet.build()))).isEmpty();
    }

    @Test
    void aSightingOnTheDayOfFittingOrAfterItIsActive() {
        fleet.injectors.removeIf(row -> row.cylinder() == 3);
        fleet.injector("T1", 3, TODAY.minusDays(8), 298_500.0);
        fleet.fault("T1", TODAY.minusDays(9), "P0093").fault("T1", TODAY.minusDays(8), "P0094");
        assertThat(safety(PlanOf.fleet(fleet.build())))
                .singleElement()
                .satisfies(leak -> assertThat(leak.evidence()).startsWith("small fuel leak (P0094)"));
    }

    @Test
    void aSightingOlderThanTheWindowIsNoLongerActive() {
        fleet.fault("T1", TODAY.minusDays(30), "P0093");
        assertThat(safety(PlanOf.fleet(fleet.build()))).isEmpty();
        Policy longer = Policy.standard().withSafety(new SafetyLimit(3, 31, 50));
        assertThat(safety(PlanOf.fleet(fleet.build(), longer)))
                .singleElement()
                .satisfies(leak -> assertThat(leak.limitSource()).isEqualTo("site rule"));
    }

    /** Seen every few days for longer than the window, it does not get a later day with every day that goes by. */
    @Test
    void aLeakSeenAgainAndAgainIsDueFromItsFirstSighting() {
        fleet.rule(RuleKind.SAFETY, 45).fault("T1", TODAY.minusDays(200), "P0093");
        for (int day = 60; day > 0; day -= 5) {
            fleet.fault("T1", TODAY.minusDays(day), "P0094");
        }
        assertThat(safety(PlanOf.fleet(fleet.build()))).singleElement().satisfies(leak -> {
            assertThat(leak.by()).isEqualTo(TODAY.minusDays(60).plusDays(45));
            assertThat(leak.evidence())
                    .startsWith("small fuel leak (P0094) reported from " + TODAY.minusDays(60) + " to "
                            + TODAY.minusDays(5));
        });
    }

    /** 3 h a day and no overtime: 15 h a week, one overdue truck of 9.2 h, which saves far more than a test of half an hour. */
    @Test
    void itComesBeforeOthersThatSaveMore() {
        FleetBuilder busy = new FleetBuilder().withDepot(1, 1.9, 0).truck("T1").truck("T2");
        busy.allInjectors("T1", 10_000).allInjectors("T2", 260_000).rule(RuleKind.DISTANCE_KM, 200_000);
        Plan without = PlanOf.fleet(busy.build());
        assertThat(without.visits().get(0).truck()).isEqualTo("T2");
        assertThat(without.visits().get(0).week()).isEqualTo(THIS_WEEK);
        Plan plan = PlanOf.fleet(
                busy.fault("T1", TODAY.minusDays(1), "SPN 157 FMI 18").build());
        assertThat(plan.visits())
                .filteredOn(visit -> visit.truck().equals("T1"))
                .singleElement()
                .satisfies(visit -> assertThat(visit.week()).isEqualTo(THIS_WEEK));
        assertThat(plan.cost().brokenWishes()).isEmpty();
        assertThat(plan.visits()).anyMatch(visit -> visit.truck().equals("T2"));
    }

    @Test
    void awayItIsToldAsBrokenAndComesWhenItIsBack() {
        fleet.truck("T2").allInjectors("T2", 210_000).rule(RuleKind.DISTANCE_KM, 200_000);
        fleet.away.add(new AwayWindow("T1", TODAY.minusDays(3), TODAY.plusDays(10), "harvest"));
        Plan plan = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(1), "P0088").build());
        assertThat(plan.cost().brokenWishes()).singleElement().satisfies(wish -> {
            assertThat(wish.truck()).isEqualTo("T1");
            assertThat(wish.wish()).isEqualTo(Schedule.Wish.LATEST_WEEK);
            assertThat(wish.reason())
                    .isEqualTo("safety needs it in by 2026-W10: away 2026-02-27 to 2026-03-12 (harvest)");
        });
        assertThat(plan.visits()).extracting(Visit::truck).containsExactly("T2", "T1");
        assertThat(plan.visits().get(1).week()).isEqualTo(new IsoWeek(2026, 11));
    }

    @Test
    void refusedItIsToldAsBroken() {
        fleet.fault("T1", TODAY.minusDays(1), "P0088");
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of(), Map.of("T1", Set.of(THIS_WEEK)), Map.of()));
        assertThat(plan.cost().brokenWishes())
                .singleElement()
                .satisfies(
                        wish -> assertThat(wish.reason()).isEqualTo("safety needs it in by 2026-W10: it is blocked"));
        assertThat(plan.visits().get(0).week()).isEqualTo(new IsoWeek(2026, 11));
    }

    @Test
    void aPinBehindTheDateDoesNotHold() {
        fleet.fault("T1", TODAY.minusDays(1), "P0088");
        Plan plan = PlanOf.held(fleet.build(), new Holds(Map.of("T1", new IsoWeek(2026, 14)), Map.of(), Map.of()));
        assertThat(plan.visits().get(0).week()).isEqualTo(THIS_WEEK);
        assertThat(plan.cost().brokenWishes())
                .singleElement()
                .satisfies(wish ->
                        assertThat(wish.reason()).isEqualTo("pinned to 2026-W14: safety needs it in by 2026-W10"));
    }

    /** A pin beyond the plan keeps an ordinary truck out of it, but not one that leaks. */
    @Test
    void aPinBeyondThePlanDoesNotHold() {
        Holds later = new Holds(Map.of("T1", THIS_WEEK.plus(40)), Map.of(), Map.of());
        fleet.fault("T1", TODAY.minusDays(1), "P0088");
        Plan plan = PlanOf.held(fleet.build(), later);
        assertThat(plan.visits().get(0).week()).isEqualTo(THIS_WEEK);
        assertThat(plan.cost().brokenWishes())
                .singleElement()
                .satisfies(wish ->
                        assertThat(wish.reason()).isEqualTo("pinned to 2026-W50: safety needs it in by 2026-W10"));
    }

    /** One who knows of a small leak is still told of a large one. */
    @Test
    void eachCodeIsAFindingOfItsOwn() {
        fleet.fault("T1", TODAY.minusDays(2), "P0094").fault("T1", TODAY.minusDays(1), "P0093");
        assertThat(safety(PlanOf.fleet(fleet.build())))
                .extracting(DueItem::faultCode)
                .containsExactly("P0094", "P0093");
    }

    /** A day late costs once a truck, of the earliest code: three codes may be one leak. */
    @Test
    void threeCodesCostTheLatenessOfOne() {
        FleetBuilder other = new FleetBuilder().truck("T1").allInjectors("T1", 10_000);
        fleet.away.add(new AwayWindow("T1", TODAY.minusDays(3), TODAY.plusDays(10), "harvest"));
        other.away.add(new AwayWindow("T1", TODAY.minusDays(3), TODAY.plusDays(10), "harvest"));
        Plan one = PlanOf.fleet(fleet.fault("T1", TODAY.minusDays(2), "P0094").build());
        Plan three = PlanOf.fleet(other.fault("T1", TODAY.minusDays(2), "P0094")
                .fault("T1", TODAY.minusDays(1), "P0093")
                .fault("T1", TODAY.minusDays(1), "P0088")
                .build());
        assertThat(safety(three)).hasSize(3);
        assertThat(three.cost().cost()).isEqualTo(one.cost().cost());
    }
}
