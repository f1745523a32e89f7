package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;

/**
 * A visit that has its week.
 *
 * @param truck the truck; one visit a truck
 * @param week weeks from the plan's first
 * @param labourHours labour it takes, above 0
 * @param notOn days on which the truck cannot be spared
 */
public record DayVisit(String truck, int week, double labourHours, Set<LocalDate> notOn) {
    public DayVisit {
        Require.within("week", week, 0, 520);
        Require.positive("labour_hours", labourHours);
        notOn = Set.copyOf(new TreeSet<>(notOn));
    }
}
