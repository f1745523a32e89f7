package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.outlook.Outlook;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Outlooks that were asked for: each is worked out once, in the background, and kept until others have pushed it out. A new
 * plan is another question, so that nothing here grows old.
 */
final class OutlookBook implements AutoCloseable {
    private static final int KEPT = 12;
    private static final long SECONDS_TO_END = 10;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "outlook");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private final Map<Question, Making> made = new LinkedHashMap<>(16, 0.75f, true);
    private volatile boolean closed;

    /**
     * What an outlook is of.
     *
     * @param depots depots in it
     * @param plans numbers of their plans
     * @param months months ahead
     */
    record Question(List<String> depots, List<Long> plans, int months) {
        Question {
            depots = List.copyOf(depots);
            plans = List.copyOf(plans);
        }
    }

    /** One that is being worked out, or was. */
    final class Making implements ReplayWatch {
        private final CompletableFuture<Outlook> answer = new CompletableFuture<>();
        private volatile int done;
        private volatile int all;

        @Override
        public void progress(String what, int doneNow, int ofAll) {
            done = Math.max(done, ofAll > 0 ? doneNow : 0);
            all = ofAll;
        }

        @Override
        public boolean stopped() {
            return closed;
        }

        /** How far it is, in words. */
        String progress() {
            return all == 0 ? "choosing the rules of replacement" : done + " of " + all + " runs";
        }

        /** @throws RuntimeException that which its making threw */
        Optional<Outlook> find() {
            try {
                return Optional.ofNullable(answer.getNow(null));
            } catch (CompletionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : e;
            }
        }
    }

    /** The outlook of a question, begun now where nobody asked it before. */
    Making ask(Question question, Function<ReplayWatch, Outlook> maker) {
        synchronized (made) {
            Making known = made.get(question);
            if (known != null) {
                return known;
            }
            Making making = new Making();
            made.put(question, making);
            if (made.size() > KEPT) {
                made.remove(made.keySet().iterator().next());
            }
            worker.execute(() -> make(making, maker));
            return making;
        }
    }

    /** The answer where it is there already; nothing is begun for it. */
    Optional<Outlook> peek(Question question) {
        synchronized (made) {
            Making known = made.get(question);
            return known == null || known.answer.isCompletedExceptionally() ? Optional.empty() : known.find();
        }
    }

    /** The newest finished answer for these depots, of whatever plan. */
    Optional<Outlook> findNewest(List<String> depots, int months) {
        Outlook newest = null;
        synchronized (made) {
            for (Map.Entry<Question, Making> each : made.entrySet()) {
                Making making = each.getValue();
                boolean there = making.answer.isDone() && !making.answer.isCompletedExceptionally();
                if (there
                        && each.getKey().depots().equals(depots)
                        && each.getKey().months() == months) {
                    Outlook found = making.answer.join();
                    newest = newest == null || !found.today().isBefore(newest.today()) ? found : newest;
                }
            }
        }
        return Optional.ofNullable(newest);
    }

    /** Whether one of these depots was ever asked for. */
    boolean wasAsked(List<String> depots, int months) {
        synchronized (made) {
            return made.keySet().stream().anyMatch(each -> each.depots().equals(depots) && each.months() == months);
        }
    }

    private static void make(Making making, Function<ReplayWatch, Outlook> maker) {
        try {
            making.answer.complete(Objects.requireNonNull(maker.apply(making), "an outlook"));
        } catch (RuntimeException e) {
            making.answer.completeExceptionally(e);
        }
    }

    @Override
    public void close() {
        closed = true;
        worker.shutdown();
        try {
            if (!worker.awaitTermination(SECONDS_TO_END, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            worker.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
