package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Work beside the cylinders: an injector test or a scheduled service.
 *
 * @param name the task's name, or {@link #INSPECTION}
 * @param labourHours labour
 * @param cost what doing it in each week costs against not doing it: cost[week]; below zero it saves
 * @param weights of that, what is a weight and no money, such as lateness past a limit: weights[week]
 * @param worth the part of the saving that each cylinder stands for, by cylinder and week; lost where the visit replaces that
 *     cylinder's injector. Empty for work that has nothing to do with the injectors
 * @param rides whether it may be done along with other work; else it makes a visit by itself
 * @param must whether each visit of the truck holds it, whatever it costs
 */
public record RideAlongTask(
        String name,
        double labourHours,
        double[] cost,
        double[] weights,
        Map<Integer, double[]> worth,
        boolean rides,
        boolean must) {
    /** The name of an injector test. */
    public static final String INSPECTION = "injector test";

    public RideAlongTask {
        name = Require.name("task", name);
        Require.notNegative("labour_hours", labourHours);
        cost = cost.clone();
        weights = weights.clone();
        worth = Collections.unmodifiableMap(new TreeMap<>(worth)); // sums must not hang on a hash order
    }

    /** Work that comes along where it pays, whatever is replaced. */
    public RideAlongTask(String name, double labourHours, double[] cost, boolean rides) {
        this(name, labourHours, cost, new double[cost.length], Map.of(), rides, false);
    }

    @Override
    public double[] cost() {
        return cost.clone();
    }

    @Override
    public double[] weights() {
        return weights.clone();
    }

    double weightIn(int week) {
        return weights[week];
    }

    /** Cost in a week beside a set of cylinders replaced. */
    double costIn(int week, int set) {
        double sum = cost[week];
        if (set != 0) {
            for (Map.Entry<Integer, double[]> own : worth.entrySet()) {
                sum += (set & 1 << (own.getKey() - 1)) != 0 ? own.getValue()[week] : 0;
            }
        }
        return sum;
    }

    /**
     * The same work in a visit of its own, where another visit replaces injectors.
     *
     * @param set cylinders that the other visit replaces
     * @param before what each week saves more because the result comes before that visit; 0 where it does not
     */
    public RideAlongTask besideVisit(int set, double[] before) {
        double[] its = cost.clone();
        for (int week = 0; week < its.length; week++) {
            its[week] = costIn(week, set) - before[week];
        }
        return new RideAlongTask(name, labourHours, its, weights, Map.of(), rides, must);
    }

    /** What it adds to a visit that takes place anyway, standing included. */
    double addedIn(int week, int set, Rates rates) {
        return costIn(week, set)
                + labourHours * rates.labourPerHour()
                + rates.downtimePerDay() * labourHours / rates.bayHoursPerDay();
    }
}
