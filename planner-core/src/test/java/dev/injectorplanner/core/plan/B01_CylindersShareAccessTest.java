package dev.injectorplanner.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.visit.Visit;
import org.junit.jupiter.api.Test;

/**
 * A truck with all eight injectors beyond the limit is one visit: 0.5 + 2.5 + 3 h of access once, 8 x 0.4 h, 9.2 h in
 * all; eight visits apart would take 6 x 3.4 + 2 x 6.4 = 33.2 h.
 */
class B01_CylindersShareAccessTest {
    private final Plan plan = PlanOf.fleet(new FleetBuilder()
            .truck("T1")
            .allInjectors("T1", 210_000)
            .rule(RuleKind.DISTANCE_KM, 200_000)
            .build());

    @Test
    void eightFindingsOneVisit() {
        assertThat(plan.dueItems()).hasSize(8);
        assertThat(plan.visits()).hasSize(1);
        Visit visit = plan.visits().get(0);
        assertThat(visit.cylinders()).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(visit.labourHours()).isCloseTo(9.2, within(1e-9));
        assertThat(visit.dueItems()).hasSize(8);
    }

    @Test
    void coolantIsDrainedOnceAndByTheLargestDrain() {
        assertThat(plan.coolantNeeds())
                .singleElement()
                .satisfies(need -> assertThat(need.drainedLitres()).isEqualTo(30));
    }

    @Test
    void eightInjectorsAreNeeded() {
        assertThat(plan.partNeeds())
                .singleElement()
                .satisfies(need -> assertThat(need.needed()).isEqualTo(8));
    }
}
