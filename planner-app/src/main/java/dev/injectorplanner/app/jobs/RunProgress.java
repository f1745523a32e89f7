package dev.injectorplanner.app.jobs;

import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes how far a run is into its record, every few seconds at most. A record that cannot be written stops nothing. */
final class RunProgress implements Consumer<String> {
    private static final Logger LOG = LoggerFactory.getLogger(RunProgress.class);
    private static final long APART_NANOS = 2_000_000_000L;

    private final JobRuns runs;
    private final RunKey key;
    private final int attempt;
    private long next = System.nanoTime();

    RunProgress(JobRuns runs, RunKey key, int attempt) {
        this.runs = runs;
        this.key = key;
        this.attempt = attempt;
    }

    @Override
    public synchronized void accept(String words) {
        long now = System.nanoTime();
        if (now - next < 0) {
            return;
        }
        next = now + APART_NANOS;
        try {
            runs.progress(key, attempt, words);
        } catch (RuntimeException e) {
            LOG.warn("The progress of the {} cannot be recorded: {}", key, e.getMessage());
        }
    }
}
