package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/**
 * A life as far as the records tell: Weibull wear whose shape and scale are known only so well, as a few weighted pairs, with
 * early failures beside it. Chances averaged over the pairs carry what is not known into every forecast and every price.
 *
 * <p>The pairs are the nodes of the three-point rule of Gauss and Hermite in two directions (Abramowitz and Stegun 1964,
 * 25.4.46), laid by mean, spread and correlation of log(shape) and log(scale): what they average is exact for polynomials in
 * the logarithms up to the fifth degree.
 */
public final class PredictiveLife implements LifeModel {
    private static final double NODE = Math.sqrt(3);
    private static final double[] AT = {-NODE, 0, NODE};
    private static final double[] WEIGHT = {1 / 6.0, 2 / 3.0, 1 / 6.0};

    private final WeibullLife[] nodes;
    private final double[] weights;
    private final EarlyFailures early;

    private PredictiveLife(WeibullLife[] nodes, double[] weights, EarlyFailures early) {
        this.nodes = nodes;
        this.weights = weights;
        this.early = early;
    }

    /** A life that is known for certain. */
    public static PredictiveLife certain(WeibullLife life) {
        return new PredictiveLife(new WeibullLife[] {life}, new double[] {1}, EarlyFailures.NONE);
    }

    /** What a posterior says, with early failures beside it. */
    public static PredictiveLife of(WeibullPosterior posterior, EarlyFailures early) {
        WeibullLife centre = posterior.centralLife();
        double sdU = posterior.logShapeStdDev();
        double sdV = posterior.logScaleStdDev();
        double slope = sdU > 0 ? posterior.logCovariance() / sdU : 0;
        double rest = Math.sqrt(Math.max(0, sdV * sdV - slope * slope));
        WeibullLife[] nodes = new WeibullLife[AT.length * AT.length];
        double[] weights = new double[nodes.length];
        for (int i = 0; i < AT.length; i++) {
            for (int j = 0; j < AT.length; j++) {
                nodes[AT.length * i + j] = new WeibullLife(
                        centre.shape() * Math.exp(sdU * AT[i]),
                        centre.scale() * Math.exp(slope * AT[i] + rest * AT[j]));
                weights[AT.length * i + j] = WEIGHT[i] * WEIGHT[j];
            }
        }
        return new PredictiveLife(nodes, weights, early);
    }

    /** The same wear with other early failures. */
    public PredictiveLife with(EarlyFailures other) {
        return new PredictiveLife(nodes, weights, other);
    }

    /**
     * The life of units that wear faster, or slower below 1.
     *
     * @param wear above 0; ages are reached after 1 / wear of the use
     */
    public PredictiveLife fasterBy(double wear) {
        Require.positive("wear", wear);
        WeibullLife[] faster = new WeibullLife[nodes.length];
        for (int i = 0; i < faster.length; i++) {
            faster[i] = new WeibullLife(nodes[i].shape(), nodes[i].scale() / wear);
        }
        return new PredictiveLife(faster, weights, early);
    }

    /** Number of pairs of shape and scale. */
    public int size() {
        return nodes.length;
    }

    /** Wear by the pair at {@code index}. */
    public WeibullLife wear(int index) {
        return nodes[index];
    }

    /** Weight of the pair at {@code index}; all add up to 1. */
    public double weight(int index) {
        return weights[index];
    }

    /** Early failures beside the wear. */
    public EarlyFailures early() {
        return early;
    }

    /** Failures per unit of age by the pair at {@code index}, early ones included. */
    public double hazard(int index, double age) {
        return nodes[index].hazard(age) + early.hazard(age);
    }

    @Override
    public double survival(double age) {
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            sum += weights[i] * nodes[i].survival(age);
        }
        return sum * early.survival(age);
    }

    /** Among units alive at {@code age}, of which more have the longer lives. */
    @Override
    public double hazard(double age) {
        double alive = 0;
        double failing = 0;
        for (int i = 0; i < nodes.length; i++) {
            double here = weights[i] * nodes[i].survival(age);
            alive += here;
            failing += here == 0 ? 0 : here * nodes[i].hazard(age);
        }
        return (alive == 0 ? nodes[0].hazard(age) : failing / alive) + early.hazard(age);
    }

    /**
     * Chance that a unit alive at {@code age} fails within {@code next}. The unit is itself a row of the records, so its
     * survival so far is in the weights already.
     *
     * @param hazardMultiplier on the hazard, above 0
     */
    public double conditionalFailure(double age, double next, double hazardMultiplier) {
        Require.positive("hazard multiplier", hazardMultiplier);
        double first = early.cumulativeHazard(age, next);
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double more = nodes[i].cumulativeHazard(age, next) + first;
            sum -= weights[i] * Math.expm1(-hazardMultiplier * more);
        }
        return sum;
    }

    @Override
    public double meanLife() {
        return meanLifeWithin(longestLife());
    }

    @Override
    public double meanLifeWithin(double age) {
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            sum += weights[i] * meanWithin(nodes[i], age);
        }
        return sum;
    }

    /** Integral of survival from 0: without early failures in closed form, else piece by piece. */
    private double meanWithin(WeibullLife wear, double age) {
        if (early.share() == 0) {
            return wear.meanLifeWithin(age);
        }
        double until = Math.min(age, wear.longestLife());
        double flawed = simpson(wear, Math.min(until, 40 * early.meanAge()));
        return (1 - early.share()) * wear.meanLifeWithin(age) + early.share() * flawed;
    }

    private double simpson(WeibullLife wear, double until) {
        int pieces = 400;
        double step = until / pieces;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double at = i * step;
            double factor = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            sum += factor * Math.exp(-at / early.meanAge()) * wear.survival(at);
        }
        return sum * step / 3;
    }

    @Override
    public double longestLife() {
        double longest = 0;
        for (WeibullLife node : nodes) {
            longest = Math.max(longest, node.longestLife());
        }
        return longest;
    }
}
