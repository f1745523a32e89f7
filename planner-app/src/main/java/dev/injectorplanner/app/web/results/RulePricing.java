package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.core.plan.RulePrice;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Prices of rules, worked out once a plan beside the pages: each rule is a whole plan without it. */
public final class RulePricing implements AutoCloseable {
    private static final int KEPT = 20;

    private final Planning planning;
    private final BackgroundWork<Of, List<RulePrice>> prices = new BackgroundWork<>("rule-prices", KEPT);

    public RulePricing(Planning planning) {
        this.planning = planning;
    }

    /**
     * Whose rules: of a depot or of all, with the number of the plan.
     *
     * @param plan number of the plan in force
     */
    record Of(@Nullable String depot, long plan) {}

    /** The prices of a plan's rules, begun now where nobody asked before. */
    BackgroundWork.Job<List<RulePrice>> ask(Of of, LocalDate today) {
        return prices.ask(of, watch -> planning.priceRules(today, planning.policy(), of.depot(), watch));
    }

    /** What is there already or under way; nothing is begun. */
    Optional<BackgroundWork.Job<List<RulePrice>>> peek(Of of) {
        return prices.peek(of);
    }

    @Override
    public void close() {
        prices.close();
    }
}
