package dev.injectorplanner.app.jobs;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * One attempt at a run.
 *
 * @param key which run
 * @param attempt 1 for the first
 * @param started when this attempt began
 * @param zone zone of the depot, or of the fleet
 */
public record JobContext(RunKey key, int attempt, Instant started, ZoneId zone) {
    /** The day it is for, on the depot's calendar: the due day, however late it runs. */
    public LocalDate day() {
        return LocalDate.ofInstant(key.due(), zone);
    }
}
