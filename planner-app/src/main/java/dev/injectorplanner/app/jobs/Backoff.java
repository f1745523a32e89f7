package dev.injectorplanner.app.jobs;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** When a failed run is tried again: after 1, 5 and 25 minutes, then it has failed for good. Planner default. */
final class Backoff {
    private static final List<Duration> WAITS =
            List.of(Duration.ofMinutes(1), Duration.ofMinutes(5), Duration.ofMinutes(25));

    private Backoff() {}

    /** Attempts a run may have. */
    static int mostAttempts() {
        return WAITS.size() + 1;
    }

    /** The next try after {@code attempt} failed; nothing where it has failed for good. */
    static Optional<Instant> findNextTry(int attempt, Instant now) {
        return attempt > WAITS.size() ? Optional.empty() : Optional.of(now.plus(WAITS.get(attempt - 1)));
    }
}
