package dev.injectorplanner.core.life;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Effects of covariates on the hazard: hazard(time) = baseline(time) x exp(sum of coefficient x covariate).
 *
 * @param effects one a covariate, in the order of the records
 * @param logLikelihood partial log-likelihood (Efron) at the estimates
 * @param logLikelihoodNull the same with all coefficients 0
 * @param concordance share of comparable pairs in which the unit with the higher hazard failed first, ties in the
 *     hazard counted one half; NaN where no pair can be compared
 * @param baseline cumulative hazard at all covariates 0, one point for each different stop time, ascending
 * @param covariance of the coefficients from the information matrix, [coefficient][coefficient]
 */
@SuppressWarnings("ArrayRecordComponent") // compared nowhere
public record EffectsFit(
        List<Effect> effects,
        double logLikelihood,
        double logLikelihoodNull,
        double concordance,
        List<BaselinePoint> baseline,
        double[][] covariance) {
    public EffectsFit {
        effects = List.copyOf(effects);
        baseline = List.copyOf(baseline);
    }

    /**
     * The effect of one covariate.
     *
     * @param value log of the hazard ratio for one unit more of the covariate
     * @param stdErr from the information matrix
     * @param robustStdErr allowing for several rows of one unit; null where the rows have no ids
     */
    public record Effect(
            String name,
            double value,
            double stdErr,
            @Nullable Double robustStdErr) {}

    /** Cumulative hazard at all covariates 0 up to and including {@code time}. */
    public record BaselinePoint(double time, double cumulativeHazard) {}

    /** How many times the hazard at covariates 0 a unit with these covariates has. */
    public double relativeHazard(double[] covariates) {
        double sum = 0;
        for (int j = 0; j < effects.size(); j++) {
            sum += effects.get(j).value() * covariates[j];
        }
        return Math.exp(sum);
    }

    /** Cumulative hazard at all covariates 0 up to {@code time}. */
    public double baselineHazard(double time) {
        int low = 0;
        int high = baseline.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (baseline.get(middle).time() <= time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 0 : baseline.get(low - 1).cumulativeHazard();
    }
}
