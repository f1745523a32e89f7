package dev.injectorplanner.core.schedule;

import java.util.List;

/**
 * What a scheduler is asked.
 *
 * @param weeks weeks in the horizon
 * @param trucks trucks with their options, the most pressing first
 * @param depots capacity of each depot and week
 * @param groups capacity of each duty group and week
 */
public record ScheduleRequest(
        int weeks, List<TruckOptions> trucks, List<WeekCapacity> depots, List<GroupCapacity> groups) {
    public ScheduleRequest {
        trucks = List.copyOf(trucks);
        depots = List.copyOf(depots);
        groups = List.copyOf(groups);
    }
}
