package dev.injectorplanner.app.jobs;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A run as the history has it.
 *
 * @param key which run
 * @param byHand started by a person
 * @param node the node of the last attempt
 * @param attempt attempts so far; 0 where it was never started
 * @param outcome how it stands
 * @param started start of the last attempt
 * @param ended its end
 * @param nextTry when it will be tried again
 * @param passedOver earlier due times that were missed and are not caught up
 * @param counts what it did, in words
 * @param error what went wrong
 */
public record JobRun(
        RunKey key,
        boolean byHand,
        String node,
        int attempt,
        RunOutcome outcome,
        Instant started,
        @Nullable Instant ended,
        @Nullable Instant nextTry,
        int passedOver,
        String counts,
        @Nullable String error) {}
