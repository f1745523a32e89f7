package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.core.check.UserError;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Runs jobs: claims the run, does the task, ends the run together with what the task writes. A run that is done is not
 * repeated, a failed one is tried again later, and a person is told when it has failed for good.
 */
public final class JobRunner implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(JobRunner.class);

    private final JobRuns runs;
    private final JobRegistry registry;
    private final DepotZones zones;
    private final JobWatch watch;
    private final InstantSource clock;
    private final Map<RunKey, Integer> active = new ConcurrentHashMap<>();
    private final ScheduledExecutorService heart;

    /**
     * @param watch told of runs that end well and of those that fail for good
     */
    public JobRunner(JobRuns runs, JobRegistry registry, DepotZones zones, JobWatch watch, InstantSource clock) {
        this.runs = runs;
        this.registry = registry;
        this.zones = zones;
        this.watch = watch;
        this.clock = clock;
        this.heart = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "planner-leases");
            thread.setDaemon(true);
            return thread;
        });
        long beat = Math.max(1, runs.lease().toMillis() / 4);
        heart.scheduleWithFixedDelay(this::beat, beat, beat, TimeUnit.MILLISECONDS);
    }

    public JobRegistry registry() {
        return registry;
    }

    public JobRuns runs() {
        return runs;
    }

    /** How many runs are under way here. */
    public int active() {
        return active.size();
    }

    /**
     * Runs a job, unless the run is done, under way elsewhere, or waiting for its next try.
     *
     * @param byHand started by a person
     * @param passedOver earlier due times that this run stands for
     * @return true where an attempt was made here, well or badly
     */
    public boolean run(RunKey key, boolean byHand, int passedOver) {
        Optional<JobTask> task = registry.find(key.kind());
        if (task.isEmpty()) {
            LOG.warn("The {} is not set up here: skipped", key);
            return false;
        }
        boolean worthwhile = byHand || task.get().isWorthwhile(key);
        if (!worthwhile && runs.find(key).isEmpty()) { // one that failed is tried again all the same
            return false;
        }
        int attempt = runs.claim(key, byHand, passedOver);
        if (attempt == 0) {
            return false;
        }
        active.put(key, attempt);
        try {
            attempt(task.get(), key, attempt);
        } finally {
            active.remove(key);
        }
        return true;
    }

    /** Notes that a run was missed for too long to be caught up. */
    public void tooLate(RunKey key, int passedOver) {
        runs.tooLate(key, passedOver);
    }

    private void attempt(JobTask task, RunKey key, int attempt) {
        LOG.info("Starting: {}, attempt {}", key, attempt);
        try {
            if (attempt > Backoff.mostAttempts()) {
                failed(key, attempt, "the program stopped during each of " + (attempt - 1) + " attempts");
                return;
            }
            TaskResult result = task.run(new JobContext(
                    key, attempt, clock.instant(), zones.zoneOf(key.depot()), new RunProgress(runs, key, attempt)));
            runs.done(key, attempt, watched(key, result));
            LOG.info("Done: {}: {}", key, result.words());
        } catch (RunLostException e) {
            LOG.warn("{}", e.getMessage());
        } catch (Exception | Error e) {
            if (e instanceof InterruptedException) {
                Thread.currentThread().interrupt();
            }
            if (isOurFault(e)) {
                LOG.error("The {} failed in attempt {}", key, attempt, e);
            }
            failed(key, attempt, words(e));
        }
    }

    private void failed(RunKey key, int attempt, String error) {
        Instant now = clock.instant();
        @Nullable Instant nextTry = Backoff.findNextTry(attempt, now).orElse(null);
        TaskResult.Effect effect = connection -> {
            if (nextTry == null) {
                watch.givenUp(connection, new FailedJob(key, attempt, error));
            }
        };
        try {
            runs.failed(key, attempt, error, nextTry, effect);
        } catch (RunLostException e) {
            LOG.warn("{}", e.getMessage());
            return;
        } catch (StoreException e) {
            LOG.error("The end of the {} cannot be recorded; its lease will expire and it will be retried", key, e);
            return;
        }
        if (nextTry == null) {
            LOG.error("Needs attention: the {} failed {} times and will not be retried: {}", key, attempt, error);
        } else {
            LOG.warn("Failed: {}, attempt {}: {}", key, attempt, error);
        }
    }

    private TaskResult watched(RunKey key, TaskResult result) {
        return new TaskResult(result.counts(), result.effect().and(connection -> watch.wentWell(connection, key)));
    }

    /** What people can fix needs no stack trace; anything else deserves one. */
    private static boolean isOurFault(Throwable e) {
        return !UserError.is(e);
    }

    private static String words(Throwable e) {
        return isOurFault(e) ? e.getClass().getSimpleName() + ": " + e.getMessage() : String.valueOf(e.getMessage());
    }

    private void beat() {
        active.forEach((key, attempt) -> {
            try {
                runs.keep(key, attempt); // where it is lost, the end of the run will find out
            } catch (RuntimeException e) {
                LOG.warn("The lease of the {} cannot be renewed: {}", key, e.getMessage());
            }
        });
    }

    @Override
    public void close() {
        heart.shutdownNow();
    }
}
