package dev.injectorplanner.core.planted;

import java.time.LocalDate;

/** Breaks a rule on purpose: reads the clock. */
public final class CoreWithClock {
    LocalDate today() {
        return LocalDate.now();
    }
}
