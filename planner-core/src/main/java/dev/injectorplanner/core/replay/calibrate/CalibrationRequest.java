package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.own.UncertainLives;
import dev.injectorplanner.core.replay.scenario.Scenario;
import java.util.Set;
import java.util.function.LongFunction;

/**
 * What the planning figures are chosen for.
 *
 * @param scenario what is played, with its number of trucks
 * @param truths the truth of a fleet by its seed; of a loaded fleet each draws its own lives from what the records leave open
 * @param policy how the site plans; its figures are the first that are tried
 * @param held figures that the site has set: they are not moved
 * @param fleets fleets of the search, and as many fresh ones to confirm what it found, 2 to 1,000
 * @param weeks weeks of planning, 26 to 520
 * @param seed the same gives the same choice
 * @param threads fleets played at once, 1 or more; the choice does not depend on it
 */
public record CalibrationRequest(
        Scenario scenario,
        LongFunction<Scenario> truths,
        Policy policy,
        Set<PlanningFigure> held,
        int fleets,
        int weeks,
        long seed,
        int threads) {
    private static final int MOST_TRUCKS = 40;

    public CalibrationRequest {
        held = Set.copyOf(held);
        Require.within("fleets", fleets, 2, 1_000);
        Require.within("weeks", weeks, 26, 520);
        Require.within("threads", threads, 1, 256);
    }

    /** A scenario whose fleets all have the same truth. */
    public static CalibrationRequest of(
            Scenario scenario, Policy policy, int fleets, int weeks, long seed, int threads) {
        return new CalibrationRequest(scenario, fleet -> scenario, policy, Set.of(), fleets, weeks, seed, threads);
    }

    /**
     * A loaded fleet, at most 40 trucks of it.
     *
     * @param own the fleet's own scenario
     * @param plan what its lives were learned with
     */
    public static CalibrationRequest of(
            Scenario own,
            Plan plan,
            Policy policy,
            Set<PlanningFigure> held,
            int fleets,
            int weeks,
            long seed,
            int threads) {
        Scenario sized = own.withTrucks(Math.min(MOST_TRUCKS, own.trucks()));
        UncertainLives lives = new UncertainLives(sized, plan);
        return new CalibrationRequest(sized, lives::drawn, policy, held, fleets, weeks, seed, threads);
    }
}
