package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.PolicyResult;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Figures chosen for a fleet, and what they are worth there.
 *
 * @param words what was played
 * @param trucks trucks of each fleet
 * @param fleets fleets of the search; as many fresh ones confirmed it
 * @param weeks weeks of planning
 * @param seed the seed
 * @param stopped whether it was stopped before its end; then nothing was chosen
 * @param before the figures the search began with
 * @param found the best of the search
 * @param chosen what to plan with: those found where they surely gain on the fresh fleets, else those before
 * @param trials what was tried, in order
 * @param policies on the fresh fleets: the simple rules with the figures that the search fleets gave them, the planner before, and with the
 *     figures found; differences are to the planner before
 */
public record CalibrationResult(
        String words,
        int trucks,
        int fleets,
        int weeks,
        long seed,
        boolean stopped,
        PlanningFigures before,
        PlanningFigures found,
        PlanningFigures chosen,
        List<FigureTrial> trials,
        List<PolicyResult> policies) {
    /** Names of the two uses of the planner among the policies. */
    public static final String BEFORE = "planner, figures before";

    public static final String FOUND = "planner, figures found";

    public CalibrationResult {
        trials = List.copyOf(trials);
        policies = List.copyOf(policies);
    }

    /** The cheapest simple rule on the fresh fleets; empty where it was stopped. */
    public Optional<PolicyResult> bestRule() {
        return policies.stream()
                .filter(each -> !each.policy().equals(BEFORE) && !each.policy().equals(FOUND))
                .min(Comparator.comparingDouble(PolicyResult::costPer1000Km));
    }

    /** The planner as it was or with the figures found, whichever was chosen; empty where it was stopped. */
    public Optional<PolicyResult> planner() {
        String name = chosen.equals(before) ? BEFORE : FOUND;
        return policies.stream().filter(each -> each.policy().equals(name)).findFirst();
    }

    /** Whether a simple rule is cheaper here than the planner with the figures chosen. */
    public boolean isRuleCheaper() {
        Optional<PolicyResult> rule = bestRule();
        Optional<PolicyResult> planner = planner();
        return rule.isPresent()
                && planner.isPresent()
                && rule.get().costPer1000Km() < planner.get().costPer1000Km();
    }
}
