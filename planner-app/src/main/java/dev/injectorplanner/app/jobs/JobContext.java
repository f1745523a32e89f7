package dev.injectorplanner.app.jobs;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Consumer;

/**
 * One attempt at a run.
 *
 * @param key which run
 * @param attempt 1 for the first
 * @param started when this attempt began
 * @param zone zone of the depot, or of the fleet
 * @param progress takes how far it is, in words, for the run's record; may be told often
 */
public record JobContext(RunKey key, int attempt, Instant started, ZoneId zone, Consumer<String> progress) {
    /** Of which nobody asks how far it is. */
    public JobContext(RunKey key, int attempt, Instant started, ZoneId zone) {
        this(key, attempt, started, zone, words -> {});
    }

    /** The day it is for, on the depot's calendar: the due day, however late it runs. */
    public LocalDate day() {
        return LocalDate.ofInstant(key.due(), zone);
    }
}
