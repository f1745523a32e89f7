package dev.injectorplanner.core.replay.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.PairedGain;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.run.Ledger;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Choosing the planning figures by replay. */
class CalibrationTest {
    private static final Planner PLANNER = new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1)));
    private static final Scenario SMALL = Scenarios.getScenario("strong-tests").withTrucks(4);

    private static CalibrationRequest request(Set<PlanningFigure> held, int threads) {
        return new CalibrationRequest(SMALL, seed -> SMALL, Policy.standard().withWeeks(8), held, 2, 26, 3, threads);
    }

    @Test
    void the_same_seed_gives_the_same_choice_on_any_number_of_threads_and_each_try_moves_one_figure() {
        CalibrationResult result = Calibration.run(request(Set.of(), 1), PLANNER, ReplayWatch.NONE);
        assertThat(Calibration.run(request(Set.of(), 2), PLANNER, ReplayWatch.NONE))
                .isEqualTo(result);
        assertThat(result.stopped()).isFalse();
        PlanningFigures best = result.before();
        for (FigureTrial trial : result.trials()) {
            PlanningFigures from = best;
            assertThat(Arrays.stream(PlanningFigure.values())
                            .filter(figure -> figure.of(from) != figure.of(trial.figures())))
                    .hasSize(1);
            assertThat(trial.kept()).isEqualTo(trial.difference() < -trial.error());
            best = trial.kept() ? trial.figures() : best;
        }
        assertThat(result.found()).isEqualTo(best);
        assertThat(result.policies().stream().map(PolicyResult::policy))
                .containsExactly(
                        ReplayResult.RUN_TO_FAILURE,
                        ReplayResult.FIXED_INTERVAL,
                        ReplayResult.THRESHOLDS,
                        ReplayResult.SIGNS,
                        CalibrationResult.BEFORE,
                        CalibrationResult.FOUND);
        assertThat(result.chosen()).isIn(result.before(), result.found());
    }

    /** Differences -2, -1, -3: mean -2, standard deviation 1, standard error 1 over the root of 3. */
    @Test
    void a_paired_gain_is_the_mean_over_fleets_with_its_standard_error() {
        PairedGain gain =
                PairedGain.of(List.of(fleet(8), fleet(9), fleet(7)), List.of(fleet(10), fleet(10), fleet(10)));
        assertThat(gain.difference()).isCloseTo(-2, within(1e-9));
        assertThat(gain.error()).isCloseTo(0.57735, within(1e-5));
        assertThat(gain.isSure(3)).isTrue();
        assertThat(gain.isSure(4)).isFalse();
    }

    private static Ledger fleet(double costPer1000Km) {
        Ledger ledger = new Ledger();
        ledger.km = 1_000;
        ledger.add(CostKind.PARTS, costPer1000Km);
        return ledger;
    }

    @Test
    void what_the_site_holds_is_not_moved() {
        Set<PlanningFigure> others = EnumSet.complementOf(EnumSet.of(PlanningFigure.TEST_WORTH));
        CalibrationResult result = Calibration.run(request(others, 2), PLANNER, ReplayWatch.NONE);
        assertThat(result.trials())
                .isNotEmpty()
                .allSatisfy(trial -> assertThat(
                                trial.figures().withTestWorth(result.before().testWorth()))
                        .isEqualTo(result.before()));
    }

    @Test
    void stopped_it_chooses_nothing() {
        CalibrationResult result = Calibration.run(request(Set.of(), 1), PLANNER, new ReplayWatch() {
            @Override
            public boolean stopped() {
                return true;
            }
        });
        assertThat(result.stopped()).isTrue();
        assertThat(result.chosen()).isEqualTo(Policy.standard().figures());
        assertThat(result.policies()).isEqualTo(List.of());
    }
}
