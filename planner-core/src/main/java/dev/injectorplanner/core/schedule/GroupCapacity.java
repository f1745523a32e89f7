package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.check.Require;

/**
 * Days that trucks of a duty group may stand in a week.
 *
 * @param dutyGroup the duty group
 * @param week weeks from the plan's first
 * @param truckDays trucks above the minimum on the road, times working days
 */
public record GroupCapacity(String dutyGroup, int week, double truckDays) {
    public GroupCapacity {
        Require.notNegative("truck_days", truckDays);
    }
}
