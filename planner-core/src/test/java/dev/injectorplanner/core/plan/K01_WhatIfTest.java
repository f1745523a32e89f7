package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.plan.PlanChange.VisitChange;
import dev.injectorplanner.core.plan.PlanChange.What;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Three overdue trucks of 9.2 h each in a depot with 15 h a week and 4 h overtime at 30 more an hour: two come this week
 * with 3.4 h overtime (102), the third a week later. With 15 h more this week all three come now, without overtime.
 */
class K01_WhatIfTest {
    private static final IsoWeek FIRST = new IsoWeek(2026, 10);
    private static final IsoWeek SECOND = new IsoWeek(2026, 11);

    private final Planner planner = PlanOf.planner();
    private final PreparedFleet fleet = planner.prepare(
            new FleetBuilder()
                    .withDepot(2, 3, 4)
                    .onShelf(24)
                    .truck("T1")
                    .truck("T2")
                    .truck("T3")
                    .allInjectors("T1", 210_000)
                    .allInjectors("T2", 230_000)
                    .allInjectors("T3", 220_000)
                    .rule(RuleKind.DISTANCE_KM, 200_000)
                    .build(),
            Policy.standard(),
            TODAY);
    private final PreparedFleet.Trial base = planner.tryOut(fleet, Holds.none(), List.of());

    private PlanChange with(ExtraCapacity... extra) {
        return fleet.change(base, planner.tryOut(fleet, Holds.none(), List.of(extra), base));
    }

    @Test
    void nothingChangedIsNoChange() {
        PlanChange change = with();
        assertThat(change.visits()).isEmpty();
        assertThat(change.cost()).isZero();
        assertThat(change.hours()).isZero();
        assertThat(change.expectedFailures()).isZero();
    }

    @Test
    void hoursAddedBringTheThirdTruckForward() {
        PlanChange change = with(new ExtraCapacity(NORTH, FIRST, 15, 0));
        assertThat(change.visits()).singleElement().satisfies(visit -> {
            assertThat(visit.truck()).isEqualTo("T1");
            assertThat(visit.what()).isEqualTo(What.MOVED);
            assertThat(visit.before().week()).isEqualTo(SECOND);
            assertThat(visit.after().week()).isEqualTo(FIRST);
        });
        assertThat(change.hours()).isZero();
        assertThat(change.cost()).isLessThan(-3.4 * 30);
        assertThat(change.expectedFailures()).isNegative();
        assertThat(change.gap()).isCloseTo(0, within(1e-12));
    }

    /** Six trucks of one age, some equal plans: a pin swaps two of them and lets the others stay. */
    @Test
    void aPinMovesNoTruckThatNeedNotMove() {
        FleetBuilder builder = new FleetBuilder().withDepot(1, 2, 0).rule(RuleKind.DISTANCE_KM, 200_000);
        for (int truck = 1; truck <= 6; truck++) {
            builder.truck("E" + truck).allInjectors("E" + truck, 220_000);
        }
        PreparedFleet equal = planner.prepare(builder.build(), Policy.standard(), TODAY);
        PreparedFleet.Trial before = planner.tryOut(equal, Holds.none(), List.of());
        Map<String, IsoWeek> weeks =
                planner.tell(before).visits().stream().collect(Collectors.toMap(Visit::truck, Visit::week));
        String first = weeks.entrySet().stream()
                .min(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        IsoWeek last = weeks.values().stream().max(IsoWeek::compareTo).orElseThrow();
        Holds pin = new Holds(Map.of(first, last), Map.of(), Map.of());
        PlanChange change = equal.change(before, planner.tryOut(equal, pin, List.of(), before));
        assertThat(change.visits())
                .hasSizeLessThanOrEqualTo(2)
                .extracting(VisitChange::truck)
                .contains(first);
    }

    /** The full plan of the trial has no overtime left, and the hours are on its loads. */
    @Test
    void aTrialIsToldAsAPlan() {
        Plan plan = planner.tell(planner.tryOut(fleet, Holds.none(), List.of(new ExtraCapacity(NORTH, FIRST, 15, 0))));
        assertThat(plan.loads().get(0).availableHours()).isCloseTo(30, within(1e-9));
        assertThat(plan.loads().get(0).overtimeHours()).isZero();
        assertThat(plan.visits()).extracting(Visit::week).containsOnly(FIRST);
    }

    @Test
    void aTruckRefusedAltogetherIsDroppedAndRisksMore() {
        PlanChange change = fleet.change(
                base, planner.tryOut(fleet, new Holds(Map.of(), Map.of("T2", Set.of()), Map.of()), List.of(), base));
        assertThat(change.visits()).extracting(VisitChange::truck).contains("T2");
        assertThat(change.visits())
                .filteredOn(visit -> visit.truck().equals("T2"))
                .singleElement()
                .satisfies(visit -> assertThat(visit.what()).isEqualTo(What.DROPPED));
        assertThat(change.hours()).isCloseTo(-9.2, within(1e-9));
        assertThat(change.cost()).isPositive();
        assertThat(change.expectedFailures()).isPositive();
        assertThat(change.expectedFailuresBefore()).isPositive();
    }

    @Test
    void aPreparedFleetPlansAsThePlannerDoes() {
        Plan plan = planner.tell(base);
        assertThat(plan.cost()).isEqualTo(base.cost());
        assertThat(plan.visits()).hasSize(3);
    }

    @Test
    void capacityThatGoesNowhereIsRefused() {
        assertThatThrownBy(() -> with(new ExtraCapacity("South", FIRST, 15, 0)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("choose one of North");
        assertThatThrownBy(() -> with(new ExtraCapacity(NORTH, new IsoWeek(2027, 10), 15, 0)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("2026-W10 to 2026-W35");
    }
}
