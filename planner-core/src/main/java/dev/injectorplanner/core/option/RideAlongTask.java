package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;

/**
 * Work that is no cylinder: an inspection or a scheduled service.
 *
 * @param name the task's name, or {@link #INSPECTION}
 * @param labourHours labour
 * @param cost what doing it in each week costs against not doing it: cost[week]; below zero it saves
 * @param rides whether it may be done along with other work; else it makes a visit by itself
 * @param must whether each visit of the truck holds it, whatever it costs
 */
public record RideAlongTask(String name, double labourHours, double[] cost, boolean rides, boolean must) {
    /** Work that comes along where it pays. */
    public RideAlongTask(String name, double labourHours, double[] cost, boolean rides) {
        this(name, labourHours, cost, rides, false);
    }

    /** The name of an inspection. */
    public static final String INSPECTION = "injector test";

    public RideAlongTask {
        name = Require.name("task", name);
        Require.notNegative("labour_hours", labourHours);
        cost = cost.clone();
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    double costIn(int week) {
        return cost[week];
    }

    /** What it adds to a visit that takes place anyway, standing included. */
    double addedIn(int week, Rates rates) {
        return cost[week]
                + labourHours * rates.labourPerHour()
                + rates.downtimePerDay() * labourHours / rates.bayHoursPerDay();
    }
}
