package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A visit confirmed for week 14 that is best in week 10. What staying costs more is read off the plan itself; a rescheduling cost
 * above it keeps the visit where it is, one below lets it go.
 */
class J01_ConfirmedVisitsTest {
    private static final IsoWeek FIRST = new IsoWeek(2026, 10);
    private static final IsoWeek SECOND = new IsoWeek(2026, 11);
    private static final IsoWeek ANNOUNCED = new IsoWeek(2026, 14);

    private final FleetBuilder fleet =
            new FleetBuilder().truck("T1").allInjectors("T1", 210_000).rule(RuleKind.DISTANCE_KM, 200_000);

    private Plan plan(double reschedulingCost, int frozen, Holds holds) {
        VisitRules usual = VisitRules.standard();
        VisitRules rules = new VisitRules(
                usual.bayPerVisit(),
                usual.coolantPerLitre(),
                usual.downtimePerDay(),
                usual.latePerDay(),
                usual.taskLatePerDay(),
                usual.warrantyTestWorth(),
                reschedulingCost,
                frozen,
                usual.keptSets());
        return PlanOf.held(fleet.build(), holds, Policy.standard().withVisits(rules));
    }

    private static Holds confirmed(IsoWeek week) {
        return new Holds(Map.of(), Map.of(), Map.of("T1", week));
    }

    private IsoWeek weekOf(Plan plan) {
        return plan.visits().get(0).week();
    }

    /** What staying costs, as two plans tell it: pinned to the confirmed week, and free. */
    private double costOfStaying() {
        Holds pinned = new Holds(Map.of("T1", ANNOUNCED), Map.of(), Map.of());
        return plan(0, 0, pinned).cost().cost()
                - plan(0, 0, Holds.none()).cost().cost();
    }

    @Test
    void itMovesOnlyIfThatPaysMoreThanTheNuisance() {
        double staying = costOfStaying();
        assertThat(weekOf(plan(0, 0, Holds.none()))).isEqualTo(FIRST);
        assertThat(staying).isGreaterThan(10);
        assertThat(weekOf(plan(staying + 1, 0, confirmed(ANNOUNCED)))).isEqualTo(ANNOUNCED);
        assertThat(weekOf(plan(staying - 1, 0, confirmed(ANNOUNCED)))).isEqualTo(FIRST);
    }

    @Test
    void aFrozenWeekHoldsWhateverMovingPays() {
        assertThat(weekOf(plan(0, 2, confirmed(SECOND)))).isEqualTo(SECOND);
        assertThat(weekOf(plan(0, 1, confirmed(SECOND)))).isEqualTo(FIRST);
    }

    @Test
    void aPinGoesBeforeWhatWasAnnounced() {
        Holds both = new Holds(Map.of("T1", ANNOUNCED), Map.of(), Map.of("T1", FIRST));
        assertThat(weekOf(plan(80, 1, both))).isEqualTo(ANNOUNCED);
    }

    @Test
    void aRefusedWeekIsLeftThoughItWasAnnounced() {
        Holds refused = new Holds(Map.of(), Map.of("T1", Set.of(FIRST)), Map.of("T1", FIRST));
        assertThat(weekOf(plan(80, 1, refused))).isEqualTo(SECOND);
    }

    /** A visit that was confirmed and no longer pays by itself stays as long as that costs less than the rescheduling cost. */
    @Test
    void aVisitThatNoLongerPaysStaysForTheSakeOfPeace() {
        FleetBuilder young = new FleetBuilder().truck("T1").allInjectors("T1", 10_000);
        assertThat(PlanOf.held(young.build(), Holds.none()).visits()).isEmpty();
        VisitRules usual = VisitRules.standard();
        VisitRules dear = new VisitRules(
                usual.bayPerVisit(),
                usual.coolantPerLitre(),
                usual.downtimePerDay(),
                usual.latePerDay(),
                usual.taskLatePerDay(),
                usual.warrantyTestWorth(),
                1e6,
                0,
                usual.keptSets());
        Plan plan = PlanOf.held(
                young.build(), confirmed(ANNOUNCED), Policy.standard().withVisits(dear));
        assertThat(weekOf(plan)).isEqualTo(ANNOUNCED);
    }
}
