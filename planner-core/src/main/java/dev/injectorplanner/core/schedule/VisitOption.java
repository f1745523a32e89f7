package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * One way to treat a truck: a set of work in a week.
 *
 * @param week weeks from the plan's first, 0 or more
 * @param cylinders cylinders whose injectors are replaced, ascending; may be empty
 * @param labourHours labour it takes
 * @param truckDays days the truck stands and holds a bay, above 0
 * @param cost cost against no visit; negative saves
 */
public record VisitOption(int week, List<Integer> cylinders, double labourHours, double truckDays, double cost) {
    public VisitOption {
        Require.within("week", week, 0, 520);
        cylinders = List.copyOf(cylinders);
        Require.notNegative("labour_hours", labourHours);
        Require.positive("truck_days", truckDays);
        Require.within("cost", cost, -1e12, 1e12);
    }
}
