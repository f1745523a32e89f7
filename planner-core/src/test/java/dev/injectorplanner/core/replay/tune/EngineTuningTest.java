package dev.injectorplanner.core.replay.tune;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.plan.EngineFigures;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Choosing the engine's figures by replay. */
class EngineTuningTest {
    private static final Planner PLANNER = new Planner(new ExactScheduler(new SearchLimits(1, 1e-3, 1, 1)));
    private static final Scenario SMALL = Scenarios.getScenario("strong-tests").withTrucks(6);

    private static TuningRequest request(Set<EngineFigure> held, int threads) {
        return new TuningRequest(SMALL, seed -> SMALL, Policy.standard().withWeeks(12), held, 2, 26, 3, threads);
    }

    @Test
    void the_same_seed_gives_the_same_choice_on_any_number_of_threads_and_each_try_moves_one_figure() {
        TuningResult result = EngineTuning.run(request(Set.of(), 1), PLANNER, ReplayWatch.NONE);
        assertThat(EngineTuning.run(request(Set.of(), 2), PLANNER, ReplayWatch.NONE))
                .isEqualTo(result);
        assertThat(result.stopped()).isFalse();
        EngineFigures best = result.before();
        for (FigureTrial trial : result.trials()) {
            EngineFigures from = best;
            assertThat(Arrays.stream(EngineFigure.values())
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
                        TuningResult.BEFORE,
                        TuningResult.FOUND);
        PolicyResult found = result.policies().get(5);
        assertThat(result.chosen()).isEqualTo(found.difference() < 0 ? result.found() : result.before());
    }

    @Test
    void what_the_site_holds_is_not_moved() {
        Set<EngineFigure> others = EnumSet.complementOf(EnumSet.of(EngineFigure.TEST_WORTH));
        TuningResult result = EngineTuning.run(request(others, 2), PLANNER, ReplayWatch.NONE);
        assertThat(result.trials())
                .isNotEmpty()
                .allSatisfy(trial -> assertThat(
                                trial.figures().withTestWorth(result.before().testWorth()))
                        .isEqualTo(result.before()));
    }

    @Test
    void stopped_it_chooses_nothing() {
        TuningResult result = EngineTuning.run(request(Set.of(), 1), PLANNER, new ReplayWatch() {
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
