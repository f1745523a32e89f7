package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A scheduled service that was done on a truck.
 *
 * @param truck the truck
 * @param task its name, as in the table intervals
 * @param doneOn the day
 * @param odometerKm odometer then, km; null where nobody read it
 * @param engineHours engine hours then; null where nobody read them
 */
public record TaskDone(
        String truck,
        String task,
        LocalDate doneOn,
        @Nullable Double odometerKm,
        @Nullable Double engineHours) {
    public TaskDone {
        truck = Require.name("truck", truck);
        task = Require.name("task", task);
        Require.optionalNotNegative("odometer", odometerKm);
        Require.optionalNotNegative("engine_hours", engineHours);
    }
}
