package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One overdue truck alone in its depot: what each other week costs is what the plan costs more with the truck pinned there. */
class U01_AnotherWeekTest {
    private static final IsoWeek FIRST = IsoWeek.of(TODAY);

    private static FleetBuilder fleet() {
        return new FleetBuilder()
                .onShelf(8)
                .truck("T1")
                .allInjectors("T1", 210_000)
                .rule(RuleKind.DISTANCE_KM, 200_000);
    }

    private static List<VisitReason.OtherWeek> weeksOf(Plan plan) {
        return plan.reasons().get(0).reason().otherWeeks();
    }

    @Test
    void eachOfTheNextFiveWeeksCostsWhatThePlanPinnedToItCostsMore() {
        FleetBuilder fleet = fleet();
        Plan plan = PlanOf.fleet(fleet.build());
        assertThat(plan.visits().get(0).week()).isEqualTo(FIRST);
        assertThat(weeksOf(plan)).extracting(VisitReason.OtherWeek::week).containsExactly(1, 2, 3, 4, 5);
        for (VisitReason.OtherWeek other : weeksOf(plan)) {
            Holds pin = new Holds(Map.of("T1", FIRST.plus(other.week())), Map.of(), Map.of());
            PlanCost pinned = PlanOf.held(fleet.build(), pin).cost();
            assertThat(other.costs()).isCloseTo(pinned.cost() - plan.cost().cost(), within(0.01));
            assertThat(other.weights()).isCloseTo(pinned.weights() - plan.cost().weights(), within(0.01));
            assertThat(other.moving()).isCloseTo(0, within(0.01)); // nothing was confirmed, hours are free
            assertThat(other.partsInTime()).isTrue();
            assertThat(other.limit()).isNull();
        }
    }

    @Test
    void aWeekInWhichItIsAwayOrBlockedSaysSo() {
        FleetBuilder fleet = fleet();
        fleet.away.add(new AwayWindow("T1", TODAY.plusDays(14), TODAY.plusDays(20), "harvest"));
        Holds blocked = new Holds(Map.of(), Map.of("T1", Set.of(FIRST.plus(1))), Map.of());
        List<VisitReason.OtherWeek> weeks = weeksOf(PlanOf.held(fleet.build(), blocked));
        assertThat(weeks.get(0).limit()).isEqualTo("it is blocked");
        assertThat(weeks.get(1).limit()).startsWith("away 2026-03-16 to 2026-03-22 (harvest)");
        assertThat(weeks.get(2).limit()).isNull();
    }

    /** Nothing in stock on a Wednesday: express is there on Friday, and the visit stands more than one day. */
    @Test
    void aWeekBeforeItsPartsCanBeThereSaysSo() {
        FleetBuilder fleet = new FleetBuilder()
                .onShelf(0)
                .truck("T1")
                .allInjectors("T1", 210_000)
                .rule(RuleKind.DISTANCE_KM, 200_000);
        Plan plan = PlanOf.planner().plan(fleet.build(), Policy.standard(), TODAY.plusDays(2));
        assertThat(plan.visits().get(0).week()).isEqualTo(FIRST.plus(1));
        VisitReason.OtherWeek before = weeksOf(plan).get(0);
        assertThat(before.week()).isZero();
        assertThat(before.partsInTime()).isFalse();
        assertThat(before.limit()).isEqualTo("its parts cannot be there in time");
    }
}
