package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import org.jspecify.annotations.Nullable;

/**
 * Work that comes round by distance, hours or months; whichever comes first, at least one of the three is there.
 *
 * @param family engine family
 * @param task its name
 * @param everyKm km between, or null
 * @param everyHours engine hours between, or null
 * @param everyMonths months between, or null
 * @param hours labour
 * @param rides whether it may be done along with a visit
 */
public record IntervalTask(
        String family,
        String task,
        @Nullable Double everyKm,
        @Nullable Double everyHours,
        @Nullable Integer everyMonths,
        double hours,
        boolean rides) {
    public IntervalTask {
        family = Require.name("family", family);
        task = Require.name("task", task);
        Require.optionalPositive("every", everyKm);
        Require.optionalPositive("every_hours", everyHours);
        if (everyMonths != null) {
            Require.within("every_months", everyMonths, 1, 600);
        }
        if (everyKm == null && everyHours == null && everyMonths == null) {
            throw new InvalidValueException(
                    "every_km", "", "every_hours and every_months are all empty", "enter at least one of them");
        }
        Require.within("hours", hours, 0, 1_000);
    }
}
