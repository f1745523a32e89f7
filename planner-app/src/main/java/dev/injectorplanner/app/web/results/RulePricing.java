package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.replay.ReplayWatch;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;

/** Prices of rules, worked out once a plan beside the pages: each rule is a whole plan without it. */
public final class RulePricing implements AutoCloseable {
    private static final int KEPT = 20;

    private final Planning planning;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "rule-prices");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private final Map<Of, Making> made = new LinkedHashMap<>();
    private volatile boolean closed;

    public RulePricing(Planning planning) {
        this.planning = planning;
    }

    /**
     * Whose rules: of a depot or of all, with the number of the plan.
     *
     * @param plan number of the plan in force
     */
    record Of(@Nullable String depot, long plan) {}

    /** Prices being worked out, or there. */
    final class Making implements ReplayWatch {
        private final CompletableFuture<List<RulePrice>> prices = new CompletableFuture<>();
        private volatile String step = "learning from the records";

        @Override
        public void progress(String what, int done, int all) {
            step = done + " of " + all + " rules priced";
        }

        @Override
        public boolean stopped() {
            return closed;
        }

        String progress() {
            return step;
        }

        Optional<List<RulePrice>> find() {
            try {
                return Optional.ofNullable(prices.getNow(null));
            } catch (CompletionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : e;
            }
        }
    }

    /** The prices of a plan's rules, begun now where nobody asked before. */
    Making ask(Of of, LocalDate today) {
        synchronized (made) {
            Making known = made.get(of);
            if (known != null) {
                return known;
            }
            Making making = new Making();
            made.put(of, making);
            if (made.size() > KEPT) {
                made.remove(made.keySet().iterator().next());
            }
            worker.execute(() -> {
                try {
                    making.prices.complete(planning.priceRules(today, planning.policy(), of.depot(), making));
                } catch (RuntimeException e) {
                    making.prices.completeExceptionally(e);
                }
            });
            return making;
        }
    }

    /** What is there already or under way; nothing is begun. */
    Optional<Making> peek(Of of) {
        synchronized (made) {
            return Optional.ofNullable(made.get(of));
        }
    }

    @Override
    public void close() {
        closed = true;
        worker.shutdownNow();
    }
}
