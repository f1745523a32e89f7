package dev.injectorplanner.core.replay;

import java.util.List;
import java.util.Optional;

/**
 * Policies compared on the same draws.
 *
 * @param scenario name of the scenario
 * @param words what it is
 * @param fleets fleets compared; fewer than asked for where it was stopped
 * @param trucks trucks of each
 * @param years years of planning
 * @param seed the seed
 * @param stopped whether it was stopped before its end
 * @param policies the policies, simple rules first; empty where no fleet was finished
 */
public record ReplayResult(
        String scenario,
        String words,
        int fleets,
        int trucks,
        int years,
        long seed,
        boolean stopped,
        List<PolicyResult> policies) {
    /** Names of the policies that are always there. */
    public static final String RUN_TO_FAILURE = "run to failure";

    public static final String FIXED_INTERVAL = "best fixed interval";
    public static final String THRESHOLDS = "best two age thresholds";
    public static final String SIGNS = "best ages and signs";
    public static final String CLAIRVOYANT = "clairvoyant";

    public ReplayResult {
        policies = List.copyOf(policies);
    }

    /** A policy by its name. */
    public Optional<PolicyResult> findPolicy(String name) {
        return policies.stream().filter(each -> each.policy().equals(name)).findFirst();
    }

    /**
     * Share of the way from the best fixed interval to the clairvoyant that a policy has gone: 1 at the clairvoyant, below 0
     * where it is worse than the interval.
     *
     * @throws IllegalArgumentException where a policy is not there
     */
    public double shareClosed(String name) {
        double from = get(FIXED_INTERVAL);
        return (from - get(name)) / (from - get(CLAIRVOYANT));
    }

    private double get(String name) {
        return findPolicy(name)
                .orElseThrow(() -> new IllegalArgumentException("no policy " + name + " in " + scenario))
                .costPer1000Km();
    }
}
