package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;

/** Days, both included, on which a truck cannot be spared, with the reason. */
public record AwayWindow(String truck, LocalDate from, LocalDate to, String reason) {
    public AwayWindow {
        truck = Require.name("truck", truck);
        reason = Require.text("reason", reason);
        if (to.isBefore(from)) {
            throw new InvalidValueException("to", to, "is before from " + from, "correct whichever is wrong");
        }
    }

    /** Whether the truck is away on any day of {@code first..last}. */
    public boolean touches(LocalDate first, LocalDate last) {
        return !from.isAfter(last) && !to.isBefore(first);
    }
}
