package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;
import org.hipparchus.special.Erf;

/**
 * A Weibull life fitted by maximum likelihood. Source: Meeker and Escobar (1998), Statistical Methods for Reliability
 * Data, chapters 8 and 11; delayed entry as in Klein and Moeschberger (2003), section 3.5. For a given shape the best
 * scale is in closed form, and what remains is concave in the shape, so the fit either finds the one maximum or says
 * that there is none.
 */
public final class WeibullFit {
    private final WeibullLikelihood likelihood;
    private final double u;
    private final double v;
    private final WeibullLife life;
    private final double logLikelihood;
    private final long events;
    private final long suspensions;
    private final double varU;
    private final double varV;
    private final double covUv;

    WeibullFit(LifeRecords records, WeibullLikelihood likelihood, double u) {
        this.likelihood = likelihood;
        this.u = u;
        this.v = likelihood.bestV(Math.exp(u));
        this.life = new WeibullLife(Math.exp(u), likelihood.unit() * Math.exp(v));
        WeibullLikelihood.Surface top = likelihood.at(u, v);
        this.logLikelihood = top.value();
        this.events = records.eventCount();
        this.suspensions = records.suspensionCount();
        double determinant = top.duu() * top.dvv() - top.duv() * top.duv();
        this.varU = -top.dvv() / determinant;
        this.varV = -top.duu() / determinant;
        this.covUv = top.duv() / determinant;
    }

    /**
     * Fits the records.
     *
     * @throws NoEstimateException if the likelihood has no maximum: no failure, all failures at the largest age seen,
     *     or late entries that point to a shape below 0.02
     */
    public static WeibullFit of(LifeRecords records) {
        WeibullLikelihood likelihood = new WeibullLikelihood(records);
        double u = ShapeSearch.logShape(records, likelihood);
        ShapeSearch.refuseTinyScale(likelihood.bestV(Math.exp(u)));
        return new WeibullFit(records, likelihood, u);
    }

    public WeibullLife life() {
        return life;
    }

    /** Shape, no unit, above 0. */
    public double shape() {
        return life.shape();
    }

    /** Scale, above 0, in the unit of the records: the age that 63 % do not reach. */
    public double scale() {
        return life.scale();
    }

    /** Standard error of the shape on its natural scale, from the observed information. */
    public double shapeStdErr() {
        return shape() * Math.sqrt(varU);
    }

    /** Standard error of the scale on its natural scale, from the observed information, in the unit of the ages. */
    public double scaleStdErr() {
        return scale() * Math.sqrt(varV);
    }

    /** Covariance of shape and scale on their natural scales. */
    public double covariance() {
        return shape() * scale() * covUv;
    }

    /** Standard error of the age by which a fraction {@code chance} has failed (delta method). */
    public double quantileStdErr(double chance) {
        return life.quantile(chance) * logQuantileStdErr(chance);
    }

    /** Log-likelihood at the maximum, of the ages themselves (density of the age, not of its logarithm). */
    public double logLikelihood() {
        return logLikelihood;
    }

    /** Failures among the records. */
    public long events() {
        return events;
    }

    /** Lives that were lost from sight without a failure. */
    public long suspensions() {
        return suspensions;
    }

    /** The age by which a tenth of new units has failed. */
    public double b10() {
        return life.quantile(0.1);
    }

    /**
     * Intervals for shape, scale and B10. Fisher: normal approximation on the logarithm (delta method for B10), so
     * never below zero. Profile: all values whose profile likelihood is within the chi-square limit (Meeker and Escobar
     * 1998, section 8.3); a side that the data leave open ends at 0 or infinity.
     *
     * @param level chance of covering the truth in repeated use, such as 0.95
     */
    public WeibullIntervals intervals(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level must be between 0 and 1, such as 0.95: " + level);
        }
        double z = Math.sqrt(2) * Erf.erfInv(level);
        double drop = 0.5 * z * z;
        double logExponent = Math.log(-Math.log1p(-0.1));
        ProfileInterval profile = new ProfileInterval(likelihood, u, v, logLikelihood - drop);
        return new WeibullIntervals(
                level,
                new WeibullIntervals.Pair(
                        around(shape(), z * Math.sqrt(varU)),
                        profile.of(ProfileInterval.Target.SHAPE, 0, z * Math.sqrt(varU))
                                .times(1)),
                new WeibullIntervals.Pair(
                        around(scale(), z * Math.sqrt(varV)),
                        profile.of(ProfileInterval.Target.QUANTILE, 0, z * Math.sqrt(varV))
                                .times(likelihood.unit())),
                new WeibullIntervals.Pair(
                        around(b10(), z * logQuantileStdErr(0.1)),
                        profile.of(ProfileInterval.Target.QUANTILE, logExponent, z * logQuantileStdErr(0.1))
                                .times(likelihood.unit())));
    }

    private double logQuantileStdErr(double chance) {
        Require.within("chance", chance, Double.MIN_VALUE, 1 - 0x1p-53);
        double slope = -Math.log(-Math.log1p(-chance)) / shape();
        return Math.sqrt(varV + slope * (2 * covUv + slope * varU));
    }

    private static WeibullIntervals.Interval around(double value, double logHalf) {
        return new WeibullIntervals.Interval(value * Math.exp(-logHalf), value * Math.exp(logHalf));
    }
}
