package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.replay.ReplayWatch;
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
import java.util.function.Predicate;

/**
 * Long work beside the pages: one question at a time in a thread of its own, each answered once and kept until others have
 * pushed it out.
 *
 * @param <K> what is asked
 * @param <V> the answer
 */
public final class BackgroundWork<K, V> implements AutoCloseable {
    private static final long SECONDS_TO_END = 10;

    private final int kept;
    private final ExecutorService worker;
    private final Map<K, Job<V>> jobs = new LinkedHashMap<>(16, 0.75f, true);
    private volatile boolean closed;

    /**
     * @param name of its thread
     * @param kept answers kept at most
     */
    public BackgroundWork(String name, int kept) {
        this.kept = kept;
        this.worker = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /** An answer that is being worked out, or there. */
    public static final class Job<V> implements ReplayWatch {
        private final CompletableFuture<V> answer = new CompletableFuture<>();
        private volatile String step = "waiting for its turn";
        private volatile int done;
        private volatile boolean stop;

        @Override
        public void progress(String what, int doneNow, int all) {
            done = Math.max(done, doneNow);
            step = all > 0 ? what + ": " + Math.min(all, done) + " of " + all : what;
        }

        @Override
        public boolean stopped() {
            return stop;
        }

        /** Asks it to end at the next step; what is finished by then is the answer. */
        public void stop() {
            stop = true;
        }

        /** How far it is, in words. */
        public String progress() {
            return stop ? "being stopped" : step;
        }

        private boolean isDone() {
            return answer.isDone() && !answer.isCompletedExceptionally();
        }

        /** @throws RuntimeException that which its making threw */
        public Optional<V> find() {
            try {
                return Optional.ofNullable(answer.getNow(null));
            } catch (CompletionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : e;
            }
        }
    }

    /** The answer to a question, begun now where nobody asked it before. */
    public Job<V> ask(K question, Function<ReplayWatch, V> maker) {
        synchronized (jobs) {
            Job<V> known = jobs.get(question);
            if (known != null) {
                return known;
            }
            Job<V> job = new Job<>();
            jobs.put(question, job);
            if (jobs.size() > kept) {
                K oldest = jobs.keySet().iterator().next();
                Objects.requireNonNull(jobs.remove(oldest)).stop();
            }
            worker.execute(() -> make(job, maker));
            return job;
        }
    }

    /** An answer that is there and was made without a failure; nothing is begun. */
    public Optional<V> findDone(K question) {
        return peek(question).filter(Job::isDone).flatMap(Job::find);
    }

    /** The answers that are there to questions of a kind, the one asked for last at the end. */
    public List<V> listDone(Predicate<K> kind) {
        synchronized (jobs) {
            return jobs.entrySet().stream()
                    .filter(each -> kind.test(each.getKey()) && each.getValue().isDone())
                    .flatMap(each -> each.getValue().find().stream())
                    .toList();
        }
    }

    /** Whether a question of a kind was asked and is still known. */
    public boolean wasAsked(Predicate<K> kind) {
        synchronized (jobs) {
            return jobs.keySet().stream().anyMatch(kind);
        }
    }

    /** What is there already or under way; nothing is begun. */
    public Optional<Job<V>> peek(K question) {
        synchronized (jobs) {
            return Optional.ofNullable(jobs.get(question));
        }
    }

    /** Forgets an answer, so that the question can be asked again. */
    public void forget(K question) {
        synchronized (jobs) {
            Job<V> known = jobs.remove(question);
            if (known != null) {
                known.stop();
            }
        }
    }

    private void make(Job<V> job, Function<ReplayWatch, V> maker) {
        try {
            if (closed) {
                job.stop();
            }
            job.answer.complete(Objects.requireNonNull(maker.apply(job), "an answer"));
        } catch (RuntimeException e) {
            job.answer.completeExceptionally(e);
        }
    }

    /** Asks what is under way to end, and waits a little for it: it may be reading the store. */
    @Override
    public void close() {
        closed = true;
        synchronized (jobs) {
            jobs.values().forEach(Job::stop);
        }
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
