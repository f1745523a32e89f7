package dev.injectorplanner.core.replace;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.numeric.AdaptiveQuadrature;

/**
 * What it costs (or, below zero, saves) to leave a unit alone: D(until) = integral from age to until of [(failure -
 * planned) hazard(u) - rate] S(u | age) du. The first part is (failure - planned) times the chance of failing by then,
 * exactly; the second is the long-run rate over the life still had, by adaptive quadrature. Source: marginal cost
 * analysis as in Dekker (1995) and Wildeman, Dekker and Smit (1997), European Journal of Operational Research
 * 99:530-551.
 */
public final class DeferralCost {
    private static final double RELATIVE_ERROR = 1e-11;
    private static final double PRACTICALLY_ALL = 1 - 0x1p-50;

    private final WeibullLife life;
    private final double extra;
    private final double rate;

    /**
     * @param newLife life of a new unit
     * @param hazardMultiplier condition of the unit in service, above 0; 1 for none
     * @param planned cost of a planned replacement
     * @param failure cost of a failure in service
     * @param rate long-run cost per unit of age of the best policy for new units, from {@link AgeReplacement}
     */
    public DeferralCost(WeibullLife newLife, double hazardMultiplier, double planned, double failure, double rate) {
        this.life = newLife.withHazardTimes(hazardMultiplier);
        this.extra = Require.notNegative("failure cost", failure) - Require.notNegative("planned cost", planned);
        this.rate = Require.notNegative("cost rate", rate);
    }

    /** A moment and the deferral cost of waiting for it; the moment is infinite for running to failure. */
    public record Moment(double age, double cost) {}

    /** Cost of leaving a unit of {@code age} until {@code until}, which is not below it; infinite means to failure. */
    public double cost(double age, double until) {
        if (until == Double.POSITIVE_INFINITY) {
            return extra - rate * life.meanResidualLife(age);
        }
        Require.notNegative("age", age);
        double wait = Require.notNegative("time until replacement", until - age);
        return extra * life.conditionalFailure(age, wait) - rate * survived(age, 0, wait);
    }

    /**
     * Costs for several moments at once, each continuing from the one before: cheaper than one by one.
     *
     * @param until ascending, none below {@code age}
     * @return one cost a moment
     */
    public double[] costs(double age, double[] until) {
        double[] costs = new double[until.length];
        double survived = 0;
        double reached = age;
        for (int i = 0; i < until.length; i++) {
            Require.notNegative("step to the next moment", until[i] - reached);
            survived += survived(age, reached - age, until[i] - age);
            costs[i] = extra * life.conditionalFailure(age, until[i] - age) - rate * survived;
            reached = until[i];
        }
        return costs;
    }

    /**
     * The cheapest moment at or beyond {@code notBefore} for a unit now at {@code age}. With a rising hazard it is
     * where (failure - planned) x hazard reaches the rate, or {@code notBefore} if that is past; with a falling one it
     * is {@code notBefore} or never.
     */
    public Moment bestMoment(double age, double notBefore) {
        double earliest = Math.max(age, notBefore);
        Moment atOnce = new Moment(earliest, cost(age, earliest));
        if (extra > 0 && life.shape() > 1) {
            double balanced = balancedAge();
            return balanced <= earliest ? atOnce : new Moment(balanced, cost(age, balanced));
        }
        Moment never = new Moment(Double.POSITIVE_INFINITY, cost(age, Double.POSITIVE_INFINITY));
        return atOnce.cost() <= never.cost() ? atOnce : never;
    }

    /** The age where (failure - planned) x hazard equals the rate, for a shape other than 1. */
    private double balancedAge() {
        double shape = life.shape();
        return life.scale() * Math.pow(rate * life.scale() / (extra * shape), 1 / (shape - 1));
    }

    /** Integral of S(age + w | age) over w from {@code from} to {@code to}. */
    private double survived(double age, double from, double to) {
        double end = Math.min(to, life.remainingQuantile(age, PRACTICALLY_ALL));
        if (end <= from) {
            return 0;
        }
        return AdaptiveQuadrature.integrate(w -> Math.exp(-life.cumulativeHazard(age, w)), from, end, RELATIVE_ERROR);
    }
}
