package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** An overdue truck that is away, for three weeks or for the whole horizon, or whose group spares nobody. */
class D01_TruckThatCannotBeSparedTest {
    private final FleetBuilder fleet =
            new FleetBuilder().truck("T1", "haul").allInjectors("T1", 210_000).rule(RuleKind.DISTANCE_KM, 200_000);

    D01_TruckThatCannotBeSparedTest() {
        fleet.dutyGroups.add(new DutyGroup("haul", 0, BigDecimal.TEN));
    }

    @Test
    void itComesInTheFirstWeekItIsBackForLongEnough() {
        fleet.away.add(new AwayWindow("T1", TODAY, TODAY.plusDays(14 + 3), "harvest"));
        assertThat(PlanOf.fleet(fleet.build()).visits().get(0).week()).isEqualTo(new IsoWeek(2026, 13));
    }

    /** The visit takes 9.2 h, 1.15 days; away until Wednesday leaves two. */
    @Test
    void twoDaysLeftOfAWeekAreEnoughForThisVisit() {
        fleet.away.add(new AwayWindow("T1", TODAY, TODAY.plusDays(14 + 2), "harvest"));
        assertThat(PlanOf.fleet(fleet.build()).visits().get(0).week()).isEqualTo(new IsoWeek(2026, 12));
    }

    @Test
    void awayTheWholeTimeItIsNotPlannedAndSaysWhy() {
        fleet.away.add(new AwayWindow("T1", TODAY.minusDays(9), LocalDate.of(2026, 9, 30), "hire"));
        Plan plan = PlanOf.fleet(fleet.build());
        assertThat(plan.visits()).isEmpty();
        assertThat(plan.unplanned()).singleElement().satisfies(row -> {
            assertThat(row.dueItems()).hasSize(8);
            assertThat(row.reason())
                    .isEqualTo(
                            "the truck cannot be spared long enough in any week: away 2026-02-21 to 2026-09-30 (hire)");
        });
    }

    @Test
    void aDutyGroupThatSparesNobodyIsNamed() {
        fleet.dutyGroups.clear();
        fleet.dutyGroups.add(new DutyGroup("haul", 1, BigDecimal.TEN));
        assertThat(PlanOf.fleet(fleet.build()).unplanned().get(0).reason()).contains("truck-days than its week has");
    }
}
