package dev.injectorplanner.core.schedule;

import dev.injectorplanner.core.calendar.IsoWeek;

/**
 * Hours booked against hours available.
 *
 * @param depot the depot
 * @param week the ISO week
 * @param visits how many visits
 * @param labourHours hours booked
 * @param availableHours hours for planned work
 * @param overtimeHours hours booked beyond those
 * @param bayDays bay-days booked
 * @param availableBayDays bay-days there are
 */
public record WeekLoad(
        String depot,
        IsoWeek week,
        int visits,
        double labourHours,
        double availableHours,
        double overtimeHours,
        double bayDays,
        double availableBayDays) {}
