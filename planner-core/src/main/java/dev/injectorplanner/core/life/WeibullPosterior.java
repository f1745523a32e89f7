package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/**
 * Few failures: what prior and records together say of a Weibull life, as weights on a grid of shapes and scales. Works
 * with no failure at all; as records grow it agrees with maximum likelihood. Source: Bayes' rule on a grid, as in Gelman
 * and others (2013), Bayesian Data Analysis, section 3.7. Chances averaged over the grid carry the uncertainty on.
 */
public final class WeibullPosterior {
    private final double[] shapes;
    private final double[] scales;
    private final double[] weights;

    WeibullPosterior(double[] shapes, double[] scales, double[] weights) {
        this.shapes = shapes;
        this.scales = scales;
        this.weights = weights;
    }

    /** Prior and records together; {@code records} may be empty. */
    public static WeibullPosterior of(LifeRecords records, WeibullPrior prior) {
        return new PosteriorGrid(records, prior).build();
    }

    /** Number of grid points kept. */
    public int size() {
        return weights.length;
    }

    /** Posterior mean of the shape. */
    public double meanShape() {
        return average(shapes);
    }

    /** Posterior mean of the scale. */
    public double meanScale() {
        return average(scales);
    }

    /** The life at the posterior means of log(shape) and log(scale): one curve that stands for the whole. */
    public WeibullLife centralLife() {
        double u = 0;
        double v = 0;
        for (int i = 0; i < weights.length; i++) {
            u += weights[i] * Math.log(shapes[i]);
            v += weights[i] * Math.log(scales[i]);
        }
        return new WeibullLife(Math.exp(u), Math.exp(v));
    }

    /** Posterior standard deviation of log(shape): 0.1 means known to about 10 %. */
    public double logShapeStdDev() {
        return logStdDev(shapes);
    }

    /** Posterior standard deviation of log(scale). */
    public double logScaleStdDev() {
        return logStdDev(scales);
    }

    /** Posterior covariance of log(shape) and log(scale). */
    public double logCovariance() {
        double meanU = 0;
        double meanV = 0;
        double cross = 0;
        for (int i = 0; i < weights.length; i++) {
            double u = Math.log(shapes[i]);
            double v = Math.log(scales[i]);
            meanU += weights[i] * u;
            meanV += weights[i] * v;
            cross += weights[i] * u * v;
        }
        return cross - meanU * meanV;
    }

    /** Predictive chance of surviving beyond {@code age}, for a new unit. */
    public double survival(double age) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * Math.exp(-Math.pow(age / scales[i], shapes[i]));
        }
        return sum;
    }

    /**
     * Predictive chance that a unit alive at {@code age} fails within {@code next}, for a unit whose own survival is
     * not among the records: lives under which it would hardly have come so far count less.
     *
     * @param hazardMultiplier for the unit's condition from now on; 1 for none. Its survival so far is judged without
     */
    public double conditionalFailure(double age, double next, double hazardMultiplier) {
        return failure(age, next, hazardMultiplier, true);
    }

    /**
     * As {@link #conditionalFailure}, for a unit that is itself a row of the records, alive at {@code age}: its
     * survival is in the weights already and must not count twice.
     */
    public double conditionalFailureOfRecorded(double age, double next, double hazardMultiplier) {
        return failure(age, next, hazardMultiplier, false);
    }

    private double failure(double age, double next, double hazardMultiplier, boolean weighBySurvival) {
        Require.notNegative("age", age);
        Require.notNegative("next", next);
        Require.positive("hazard multiplier", hazardMultiplier);
        double[] soFar = new double[weights.length];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < weights.length; i++) {
            soFar[i] = Math.pow(age / scales[i], shapes[i]);
            least = Math.min(least, soFar[i]);
        }
        double growth = age > 0 ? Math.log1p(next / age) : 0;
        double sum = 0;
        double total = 0;
        for (int i = 0; i < weights.length; i++) {
            double more = soFar[i] > 0
                    ? soFar[i] * Math.expm1(shapes[i] * growth)
                    : Math.pow((age + next) / scales[i], shapes[i]);
            double weight = weighBySurvival ? weights[i] * Math.exp(least - soFar[i]) : weights[i];
            sum -= weight * Math.expm1(-hazardMultiplier * more);
            total += weight;
        }
        return sum / total;
    }

    private double average(double[] values) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * values[i];
        }
        return sum;
    }

    private double logStdDev(double[] values) {
        double first = 0;
        for (int i = 0; i < weights.length; i++) {
            first += weights[i] * Math.log(values[i]);
        }
        double second = 0;
        for (int i = 0; i < weights.length; i++) {
            double off = Math.log(values[i]) - first;
            second += weights[i] * off * off;
        }
        return Math.sqrt(second);
    }
}
