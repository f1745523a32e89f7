package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A visit that has its week.
 *
 * @param truck the truck; in a week one ordinary visit a truck, and a diagnosis before it
 * @param week weeks from the plan's first
 * @param labourHours labour it takes, above 0
 * @param diagnosis whether it looks for the cause of a safety fault: it goes before every other visit
 * @param dutyGroup the truck's duty group, or null
 * @param notOn days on which it cannot be in: the truck cannot be spared, or its kit is not there yet
 * @param held whether its week is fixed: where a week has not room for all, others give way
 * @param pin where the foreman fixed it, or null
 */
public record DayVisit(
        String truck,
        int week,
        double labourHours,
        boolean diagnosis,
        @Nullable String dutyGroup,
        Set<LocalDate> notOn,
        boolean held,
        @Nullable DayPin pin) {
    public DayVisit {
        Require.within("week", week, 0, 520);
        Require.positive("labour_hours", labourHours);
        notOn = Set.copyOf(new TreeSet<>(notOn));
    }

    /** An ordinary visit that nobody fixed, of a truck without a duty group. */
    public DayVisit(String truck, int week, double labourHours, Set<LocalDate> notOn) {
        this(truck, week, labourHours, false, null, notOn, false, null);
    }
}
