package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.util.Comparator;
import java.util.List;

/**
 * A week of one depot.
 *
 * @param week weeks from the plan's first
 * @param days days on which it works, in any order
 * @param overtimeHours hours beyond the technicians' plain ones in the week, inside the shifts, the most there may be
 */
public record DepotWeek(int week, List<WorkDay> days, double overtimeHours) {
    public DepotWeek {
        days = days.stream().sorted(Comparator.comparing(WorkDay::date)).toList();
        Require.notNegative("overtime_hours", overtimeHours);
    }
}
