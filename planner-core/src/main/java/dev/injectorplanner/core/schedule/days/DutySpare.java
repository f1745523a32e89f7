package dev.injectorplanner.core.schedule.days;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many trucks of each duty group may be in a bay on each day: those in service, less those that must not be driven,
 * above the minimum on the road.
 *
 * @param byGroup by duty group and day; a day that is missing has no limit
 */
public record DutySpare(Map<String, Map<LocalDate, Integer>> byGroup) {
    /** No group has a limit. */
    public static final DutySpare NONE = new DutySpare(Map.of());

    public DutySpare {
        Map<String, Map<LocalDate, Integer>> copy = new TreeMap<>();
        byGroup.forEach((group, days) -> copy.put(group, Collections.unmodifiableMap(new TreeMap<>(days))));
        byGroup = Collections.unmodifiableMap(copy);
    }

    /** Trucks of a group that may be in a bay that day; {@link Integer#MAX_VALUE} where there is no limit. */
    int spare(String group, LocalDate day) {
        return byGroup.getOrDefault(group, Map.of()).getOrDefault(day, Integer.MAX_VALUE);
    }
}
