package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.parts.OrderRules;

/**
 * How a plan is to be made.
 *
 * @param weeks weeks in the horizon, 1 to 104
 * @param usageWindowDays readings of that many days back tell the usage
 * @param inspectionHours labour of testing a truck's injectors
 * @param bayHoursPerDay hours of work a truck in a bay gets a day
 * @param orders how the site buys
 * @param coolant how the site handles coolant
 */
public record Policy(
        int weeks,
        int usageWindowDays,
        double inspectionHours,
        double bayHoursPerDay,
        OrderRules orders,
        CoolantRules coolant) {
    public Policy {
        Require.within("weeks", weeks, 1, 104);
        Require.within("usage_window_days", usageWindowDays, 14, 3_650);
        Require.within("inspection_hours", inspectionHours, 0, 24);
        Require.within("bay_hours_per_day", bayHoursPerDay, 1, 24);
    }

    /** 26 weeks, a year of readings, half an hour a test, one eight-hour shift a truck, standard buying and coolant. */
    public static Policy standard() {
        return new Policy(26, 365, 0.5, 8, OrderRules.standard(), CoolantRules.standard());
    }

    public Policy withWeeks(int other) {
        return new Policy(other, usageWindowDays, inspectionHours, bayHoursPerDay, orders, coolant);
    }

    public Policy withOrders(OrderRules other) {
        return new Policy(weeks, usageWindowDays, inspectionHours, bayHoursPerDay, other, coolant);
    }

    public Policy withCoolant(CoolantRules other) {
        return new Policy(weeks, usageWindowDays, inspectionHours, bayHoursPerDay, orders, other);
    }
}
