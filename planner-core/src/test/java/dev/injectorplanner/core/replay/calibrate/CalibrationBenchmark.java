package dev.injectorplanner.core.replay.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A calibration that begins far off: some minutes, so not among the tests of every build. */
class CalibrationBenchmark {
    private static final Planner PLANNER = new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1)));

    /** Where failures come by chance, renewing at a fifth of the long-run rate throws good injectors away: the search turns back. */
    @Test
    void figures_that_are_far_off_are_left() {
        Policy policy = Policy.standard().withWeeks(12).withFigures(PlanningFigures.STANDARD.withRenewalMargin(0.2));
        Set<PlanningFigure> others = EnumSet.complementOf(EnumSet.of(PlanningFigure.RENEWAL_MARGIN));
        Scenario scenario = Scenarios.getScenario("by-chance").withTrucks(8);
        CalibrationResult result = Calibration.run(
                new CalibrationRequest(scenario, seed -> scenario, policy, others, 3, 40, 5, 2),
                PLANNER,
                ReplayWatch.NONE);
        assertThat(result.chosen().renewalMargin()).isGreaterThan(0.25);
        assertThat(result.policies().get(5).difference()).isNegative();
    }
}
