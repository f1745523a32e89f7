package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;

/**
 * A day on which a depot works.
 *
 * @param date the day
 * @param labourHours technicians' hours for planned work
 * @param bays bays in use
 */
public record OpenDay(LocalDate date, double labourHours, int bays) {
    public OpenDay {
        Require.notNegative("labour_hours", labourHours);
        Require.within("bays", bays, 0, 1_000);
    }
}
