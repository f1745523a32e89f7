package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A truck's meters at one moment; at least one of the two is there.
 *
 * @param truck the truck
 * @param takenAt the moment, UTC
 * @param odometerKm odometer, km, or null
 * @param engineHours engine hours, or null
 * @param meterReplaced true where a person said that the meter was replaced before this reading, so that going back is
 *     no error
 */
public record Reading(
        String truck,
        Instant takenAt,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        boolean meterReplaced) {
    /** A meter beyond this is a typing error: more than any truck's life, km. */
    public static final double MOST_KM = 10_000_000;

    /** A meter beyond this is a typing error, hours. */
    public static final double MOST_HOURS = 1_000_000;

    public Reading {
        truck = Require.name("truck", truck);
        if (odometerKm == null && engineHours == null) {
            throw new InvalidValueException(
                    "odometer", "", "and engine_hours are both empty", "enter at least one of them");
        }
        if (odometerKm != null) {
            Require.within("odometer", odometerKm, 0, MOST_KM);
        }
        if (engineHours != null) {
            Require.within("engine_hours", engineHours, 0, MOST_HOURS);
        }
    }
}
