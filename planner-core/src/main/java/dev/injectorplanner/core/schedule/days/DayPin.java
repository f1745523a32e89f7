package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A visit fixed to a day by the foreman.
 *
 * @param day the day it starts
 * @param bay its bay, counted from 1; null for any
 * @param start when it starts; null for any time
 */
public record DayPin(
        LocalDate day, @Nullable Integer bay, @Nullable LocalTime start) {
    public DayPin {
        if (bay != null) {
            Require.within("bay", bay, 1, 1_000);
        }
    }

    /** {@code Tuesday 2026-03-03, bay 2, 09:30}. */
    public String words() {
        String name = day.getDayOfWeek().name();
        return name.charAt(0) + name.substring(1).toLowerCase(java.util.Locale.ROOT) + " " + day
                + (bay == null ? "" : ", bay " + bay) + (start == null ? "" : ", " + start);
    }
}
