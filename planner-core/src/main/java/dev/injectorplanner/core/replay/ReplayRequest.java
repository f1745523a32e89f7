package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.scenario.Scenario;
import java.util.List;

/**
 * What to replay.
 *
 * @param scenario the truth, with its number of trucks
 * @param fleets fleets, each with its own draws, 1 to 10,000
 * @param years years of planning, 1 to 20; two years of records come before
 * @param seed the same gives the same figures
 * @param planners ways of using the planner that are compared; may be none
 * @param threads fleets played at once, 1 or more; the figures do not depend on it
 */
public record ReplayRequest(
        Scenario scenario, int fleets, int years, long seed, List<PlannerKeeper.Use> planners, int threads) {
    public ReplayRequest {
        Require.within("fleets", fleets, 1, 10_000);
        Require.within("years", years, 1, 20);
        planners = List.copyOf(planners);
        Require.within("threads", threads, 1, 256);
    }

    int weeks() {
        return 52 * years;
    }
}
