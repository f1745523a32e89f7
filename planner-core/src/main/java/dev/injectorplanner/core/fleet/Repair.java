package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A repair that was done on a truck, or a fault that was looked for and not found.
 *
 * @param truck the truck
 * @param doneOn day it was finished
 * @param odometerKm odometer then, km; null where nobody read it
 * @param what what was done; {@value #NO_FAULT_FOUND} where a diagnosis found nothing
 * @param hours labour it took; null where nobody noted it
 * @param remark anything else, or empty
 * @param by who did it or stands for it
 */
public record Repair(
        String truck,
        LocalDate doneOn,
        @Nullable Double odometerKm,
        String what,
        @Nullable Double hours,
        String remark,
        String by) {
    /** What is written where a diagnosis found nothing. */
    public static final String NO_FAULT_FOUND = "no fault found";

    public Repair {
        truck = Require.name("truck", truck);
        what = Require.text("what", what);
        if (what.isEmpty()) {
            throw new InvalidValueException(
                    "what", "", "is empty", "say what was repaired, or \"" + NO_FAULT_FOUND + "\"");
        }
        by = Require.name("by", by);
        if (odometerKm != null) {
            Require.within("odometer_km", odometerKm, 0, 1e7);
        }
        if (hours != null) {
            Require.within("hours", hours, 0, 1_000);
        }
        remark = Require.text("remark", remark);
    }

    /** Whether it says that a diagnosis found nothing. */
    public boolean foundNothing() {
        return what.equalsIgnoreCase(NO_FAULT_FOUND);
    }
}
