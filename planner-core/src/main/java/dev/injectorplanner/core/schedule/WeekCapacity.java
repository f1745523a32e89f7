package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.check.Require;

/**
 * What a depot has in a week.
 *
 * @param depot the depot
 * @param week weeks from the plan's first
 * @param labourHours hours for planned work
 * @param overtimeHours overtime on top, the most there may be
 * @param overtimePremium cost of an overtime hour beyond that of a plain one
 * @param bayDays bays times working days
 */
public record WeekCapacity(
        String depot, int week, double labourHours, double overtimeHours, double overtimePremium, double bayDays) {
    public WeekCapacity {
        Require.notNegative("labour_hours", labourHours);
        Require.notNegative("overtime_hours", overtimeHours);
        Require.notNegative("overtime_premium", overtimePremium);
        Require.notNegative("bay_days", bayDays);
    }
}
