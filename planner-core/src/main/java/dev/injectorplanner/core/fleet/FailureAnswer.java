package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;

/**
 * What somebody answered when asked whether a part without a recorded failure really never failed.
 *
 * @param part part number
 * @param answer the answer
 * @param answeredOn the day
 * @param by who answered
 */
public record FailureAnswer(String part, Answer answer, LocalDate answeredOn, String by) {
    public FailureAnswer {
        part = Require.name("part", part);
        by = Require.name("by", by);
    }

    /** What the records are worth. */
    public enum Answer {
        /** It is so: none has failed. The lives on record count. */
        NONE_FAILED,
        /** Failures were not recorded: lives are observed from the day of the answer on. */
        NOT_RECORDED
    }
}
