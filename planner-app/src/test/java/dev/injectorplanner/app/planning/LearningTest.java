package dev.injectorplanner.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.plan.Policy;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lives that were learned hold until something changes that they were learned from. */
class LearningTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Rule BALANCE = new Rule(null, RuleKind.BALANCE, 4, null);
    private static final Rule FLOW = new Rule("Four", RuleKind.RETURN_FLOW, 60, null);

    private static FleetLearning.Basis of(Policy policy, Rule... rules) {
        return FleetLearning.Basis.of(DAY, 7, policy, List.of(rules));
    }

    @Test
    void a_changed_limit_of_a_test_is_learned_anew() {
        Policy policy = Policy.standard();
        FleetLearning.Basis before = of(policy, BALANCE, FLOW);

        assertThat(of(policy, FLOW, BALANCE)).as("in any order").isEqualTo(before);
        assertThat(of(policy, new Rule(null, RuleKind.BALANCE, 3, null), FLOW)).isNotEqualTo(before);
        assertThat(of(policy, BALANCE)).isNotEqualTo(before);
        assertThat(of(policy.withDefects(new DefectDefaults(12_000, 0.9, 0.5)), BALANCE, FLOW))
                .isNotEqualTo(before);
    }
}
