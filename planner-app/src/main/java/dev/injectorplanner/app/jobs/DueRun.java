package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.jobs.time.LocalTimes;
import java.time.Instant;

/**
 * What to do when a job is fired, maybe late: of all due times missed meanwhile the latest counts, if it is not too long
 * ago.
 *
 * @param due the due time to run for
 * @param passedOver earlier due times that are left out
 * @param tooLate it is not worth running any more
 */
public record DueRun(Instant due, int passedOver, boolean tooLate) {
    private static final int MOST_COUNTED = 1_000;

    /** A run that starts this long after its time is no missed one. */
    static final java.time.Duration PROMPT = java.time.Duration.ofMinutes(5);

    /**
     * @param fired the due time that was fired
     * @param now when it could be fired at last
     */
    public static DueRun of(JobKind kind, LocalTimes times, Instant fired, Instant now) {
        Instant latest = times.latestUntil(now);
        Instant due = latest.isBefore(fired) ? fired : latest;
        boolean late =
                due.plus(PROMPT).isBefore(now) && due.plus(kind.catchUp()).isBefore(now);
        return new DueRun(due, times.countBetween(fired, due, MOST_COUNTED), late);
    }
}
