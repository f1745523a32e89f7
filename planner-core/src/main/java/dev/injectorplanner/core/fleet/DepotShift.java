package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.DayOfWeek;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A shift of a depot on one day of the week. A day may have several; together they say when its bays are worked in.
 *
 * @param depot the depot
 * @param weekday the day
 * @param start first minute of the shift
 * @param end end of the shift, on the same day
 * @param breakStart first minute of the break, or null where there is none
 * @param breakEnd end of the break, or null where there is none
 */
public record DepotShift(
        String depot,
        DayOfWeek weekday,
        LocalTime start,
        LocalTime end,
        @Nullable LocalTime breakStart,
        @Nullable LocalTime breakEnd) {
    public DepotShift {
        depot = Require.name("depot", depot);
        if (!start.isBefore(end)) {
            throw new InvalidValueException(
                    "end",
                    end,
                    "is not after the start " + start + " of the same day",
                    "enter a shift across midnight as two rows, one up to 23:59 and one from 00:00");
        }
        if ((breakStart == null) != (breakEnd == null)) {
            throw new InvalidValueException(
                    breakStart == null ? "break_start" : "break_end",
                    "",
                    "is missing while the other end of the break is given",
                    "give both ends of the break, or neither");
        }
        if (breakStart != null
                && breakEnd != null
                && (!breakStart.isBefore(breakEnd) || breakStart.isBefore(start) || breakEnd.isAfter(end))) {
            throw new InvalidValueException(
                    "break_start",
                    breakStart + " to " + breakEnd,
                    "is not a break within the shift " + start + " to " + end,
                    "enter the start before the end, both inside the shift");
        }
    }
}
