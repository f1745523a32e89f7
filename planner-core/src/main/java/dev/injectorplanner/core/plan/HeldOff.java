package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * A diagnosis that somebody holds off, against the planner's advice.
 *
 * @param reason why, in that person's words
 * @param by who answers for it
 * @param since the day it was decided
 * @param codes fault codes that were open then: another one that is reported later is not held off
 */
public record HeldOff(String reason, String by, LocalDate since, Set<String> codes) {
    public HeldOff {
        reason = Require.text("reason", reason);
        if (reason.isEmpty()) {
            throw new InvalidValueException(
                    "reason", "", "is empty", "write why the diagnosis can wait, and what is done meanwhile");
        }
        by = Require.name("by", by);
        codes = Collections.unmodifiableSet(new TreeSet<>(codes));
    }
}
