package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;

/**
 * What a truck's visit is priced with, in the site's currency.
 *
 * @param labourPerHour an hour of labour
 * @param coolantPerLitre a litre of coolant drained: what is renewed or lost, and its handling
 * @param bayPerVisit use of a bay, moving the truck in and out, paperwork
 * @param downtimePerDay a day the truck stands
 * @param bayHoursPerDay hours of work a truck in a bay gets a day, above 0
 */
public record Rates(
        double labourPerHour,
        double coolantPerLitre,
        double bayPerVisit,
        double downtimePerDay,
        double bayHoursPerDay) {
    private static final double SHORTEST_STAY_DAYS = 0.125;

    public Rates {
        Require.notNegative("labour_per_hour", labourPerHour);
        Require.notNegative("coolant_per_litre", coolantPerLitre);
        Require.notNegative("bay_per_visit", bayPerVisit);
        Require.notNegative("downtime_per_day", downtimePerDay);
        Require.positive("bay_hours_per_day", bayHoursPerDay);
    }

    /** Days a truck stands for this many hours of work: an eighth of a day at least. */
    public double truckDays(double labourHours) {
        return Math.max(SHORTEST_STAY_DAYS, labourHours / bayHoursPerDay);
    }

    /** What standing for this many hours of work costs. */
    public double downtime(double labourHours) {
        return downtimePerDay * truckDays(labourHours);
    }
}
