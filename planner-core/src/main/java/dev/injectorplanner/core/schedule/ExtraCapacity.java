package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.Require;

/**
 * Hours and bays on top of what a depot has in a week: borrowed hands, a rented bay.
 *
 * @param depot the depot
 * @param week the week; its hours and bays are spread over the days on which the depot works
 * @param labourHours hours more in the week, paid like plain ones, 0 or more
 * @param bays bays more on each of those days, 0 or more
 */
public record ExtraCapacity(String depot, IsoWeek week, double labourHours, int bays) {
    public ExtraCapacity {
        depot = Require.name("depot", depot);
        Require.within("labour_hours", labourHours, 0, 10_000);
        Require.within("bays", bays, 0, 1_000);
    }
}
