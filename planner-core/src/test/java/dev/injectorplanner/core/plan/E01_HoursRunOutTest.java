package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import org.junit.jupiter.api.Test;

/**
 * Three overdue trucks of 9.2 h each in a depot with 15 h a week and 4 h overtime: the two most pressing take 15 h and
 * 3.4 h overtime this week, the third waits a week.
 */
class E01_HoursRunOutTest {
    private final Plan plan = PlanOf.fleet(new FleetBuilder()
            .withDepot(2, 3, 4)
            .onShelf(24)
            .truck("T1")
            .truck("T2")
            .truck("T3")
            .allInjectors("T1", 210_000)
            .allInjectors("T2", 230_000)
            .allInjectors("T3", 220_000)
            .rule(RuleKind.DISTANCE_KM, 200_000)
            .build());

    @Test
    void theMostPressingComeFirst() {
        assertThat(plan.visits()).extracting(Visit::truck).containsExactly("T2", "T3", "T1");
        assertThat(plan.visits()).extracting(visit -> visit.week().week()).containsExactly(10, 10, 11);
        assertThat(plan.visits().get(2).why())
                .contains(
                        "Moving it: a week earlier would save",
                        "but is not possible: no labour hours free: 18.4 of 19 h are booked")
                .contains("a week later costs");
    }

    @Test
    void overtimeIsTold() {
        WeekLoad first = plan.loads().get(0);
        assertThat(first.visits()).isEqualTo(2);
        assertThat(first.labourHours()).isCloseTo(18.4, within(1e-9));
        assertThat(first.overtimeHours()).isCloseTo(3.4, within(1e-9));
        assertThat(plan.loads().get(1).overtimeHours()).isZero();
    }
}
