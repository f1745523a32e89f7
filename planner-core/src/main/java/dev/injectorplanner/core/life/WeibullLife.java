package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.numeric.AdaptiveQuadrature;
import org.hipparchus.special.Gamma;

/**
 * Two-parameter Weibull life: survival(age) = exp(-(age / scale)^shape). Source: Weibull (1951), A statistical
 * distribution function of wide applicability; functions as in Rausand and Hoyland (2004), System Reliability Theory,
 * chapter 2. R's survreg calls log(scale) the intercept and 1 / shape the scale.
 *
 * @param shape no unit; below 1 the hazard falls with age, above 1 it rises
 * @param scale the age at which 63.2 % have failed, in the unit of the ages (km or hours)
 */
public record WeibullLife(double shape, double scale) implements LifeModel {
    public WeibullLife {
        Require.positive("shape", shape);
        Require.positive("scale", scale);
    }

    /**
     * The life of a unit whose hazard is {@code multiplier} times this one at every age. It is again a Weibull of the
     * same shape.
     */
    public WeibullLife withHazardTimes(double multiplier) {
        Require.positive("hazard multiplier", multiplier);
        return multiplier == 1 ? this : new WeibullLife(shape, scale * Math.pow(multiplier, -1 / shape));
    }

    @Override
    public double cumulativeHazard(double age) {
        Require.notNegative("age", age);
        return Math.pow(age / scale, shape);
    }

    /** Keeps its digits however small it is. */
    @Override
    public double cumulativeHazard(double age, double next) {
        Require.notNegative("next", next);
        double before = cumulativeHazard(age);
        if (before == 0) {
            return cumulativeHazard(age + next);
        }
        double growth = shape * Math.log1p(next / age);
        return growth < 1 ? before * Math.expm1(growth) : cumulativeHazard(age + next) - before;
    }

    /** Failures per unit of age; at age 0 it is infinite, 1 / scale or 0 for a shape below, at or above 1. */
    @Override
    public double hazard(double age) {
        Require.notNegative("age", age);
        return shape / scale * Math.pow(age / scale, shape - 1);
    }

    @Override
    public double survival(double age) {
        return Math.exp(-cumulativeHazard(age));
    }

    /** Chance of failing at or before {@code age}; exact for tiny chances. */
    public double failure(double age) {
        return -Math.expm1(-cumulativeHazard(age));
    }

    /** Probability density, per unit of age. */
    public double density(double age) {
        double survival = survival(age);
        return survival == 0 ? 0 : hazard(age) * survival;
    }

    /**
     * Chance that a unit alive at {@code age} fails within the next {@code next}. Exact for tiny chances (expm1).
     *
     * @return 0..1, exactly 0 when {@code next} is 0
     */
    public double conditionalFailure(double age, double next) {
        return -Math.expm1(-cumulativeHazard(age, next));
    }

    /** As {@link #conditionalFailure(double, double)}, with the hazard of the unit in service multiplied. */
    public double conditionalFailure(double age, double next, double hazardMultiplier) {
        Require.positive("hazard multiplier", hazardMultiplier);
        return -Math.expm1(-hazardMultiplier * cumulativeHazard(age, next));
    }

    /** The age by which a fraction {@code chance} of new units has failed; B10 is {@code quantile(0.1)}. */
    public double quantile(double chance) {
        return remainingQuantile(0, chance);
    }

    /** How much longer a unit alive at {@code age} runs until its chance of having failed is {@code chance}. */
    public double remainingQuantile(double age, double chance) {
        if (!(chance > 0 && chance < 1)) {
            Require.within("chance", chance, 0, 1);
            return chance == 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        double more = -Math.log1p(-chance);
        double before = cumulativeHazard(age);
        if (before == 0) {
            return scale * Math.pow(more, 1 / shape);
        }
        return age * Math.expm1(Math.log1p(more / before) / shape);
    }

    @Override
    public double meanLife() {
        return scale * Math.exp(Gamma.logGamma(1 + 1 / shape));
    }

    /** Standard deviation of the age at failure. */
    public double standardDeviation() {
        double first = Gamma.logGamma(1 + 1 / shape);
        double second = Gamma.logGamma(1 + 2 / shape);
        return scale * Math.exp(first) * Math.sqrt(Math.expm1(second - 2 * first));
    }

    /** In closed form by the incomplete gamma function. */
    @Override
    public double meanLifeWithin(double age) {
        double hazard = cumulativeHazard(age);
        if (hazard > 700) {
            return meanLife();
        }
        return hazard < 1e-12 ? age : meanLife() * Gamma.regularizedGammaP(1 / shape, hazard, 1e-15, 100_000);
    }

    /**
     * Mean further life of a unit alive at {@code age}. Incomplete gamma function for young units; for old ones, where
     * that would lose its digits, an integral over the hazard still to come.
     */
    public double meanResidualLife(double age) {
        double before = cumulativeHazard(age);
        if (before == 0) {
            return meanLife();
        }
        if (before <= 1) {
            double beyond = Gamma.regularizedGammaQ(1 / shape, before, 1e-15, 100_000);
            return meanLife() * beyond * Math.exp(before);
        }
        return AdaptiveQuadrature.integrate(
                more -> Math.exp(-more) * age * Math.expm1(Math.log1p(more / before) / shape), 0, 45, 1e-13);
    }

    @Override
    public double longestLife() {
        return scale * Math.pow(40, 1 / shape);
    }
}
