package dev.injectorplanner.core.life;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What follows from the estimates: errors, baseline, concordance, all back on the covariates' own scales. */
final class CoxResult {
    private final CoxDesign design;
    private final double[] beta;
    private final CoxSweep sweep;
    private final double[][] inverse;

    CoxResult(CoxDesign design, double[] beta, CoxSweep sweep, Cholesky information) {
        this.design = design;
        this.beta = beta;
        this.sweep = sweep;
        this.inverse = information.inverse();
    }

    EffectsFit fit(double logLikelihoodNull) {
        CoxHazard hazard = new CoxHazard(design, beta);
        double[] robust = robustErrors(hazard);
        List<EffectsFit.Effect> effects = new ArrayList<>();
        double[][] covariance = new double[design.width][design.width];
        double atMeans = 0;
        for (int j = 0; j < design.width; j++) {
            double value = beta[j] / design.spreads[j];
            atMeans += value * design.means[j];
            for (int k = 0; k < design.width; k++) {
                covariance[j][k] = inverse[j][k] / (design.spreads[j] * design.spreads[k]);
            }
            effects.add(new EffectsFit.Effect(
                    design.records.names().get(j),
                    value,
                    Math.sqrt(covariance[j][j]),
                    robust == null ? null : Double.valueOf(robust[j] / design.spreads[j])));
        }
        return new EffectsFit(
                effects,
                sweep.logLikelihood,
                logLikelihoodNull,
                Concordance.of(design, sweep.predictors()),
                baseline(hazard, Math.exp(-sweep.shift() - atMeans)),
                covariance);
    }

    private List<EffectsFit.BaselinePoint> baseline(CoxHazard hazard, double factor) {
        List<EffectsFit.BaselinePoint> points = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int row : design.byStop) {
            double time = design.stops[row];
            if (time != last) {
                points.add(new EffectsFit.BaselinePoint(time, hazard.cumulative(time) * factor));
                last = time;
            }
        }
        return points;
    }

    /** Square roots of the diagonal of inverse x (sum over units of score x score) x inverse. */
    private double @Nullable [] robustErrors(CoxHazard hazard) {
        int[] units = design.records.units();
        if (units == null) {
            return null;
        }
        int most = 0;
        for (int unit : units) {
            most = Math.max(most, unit);
        }
        double[][] scores = new double[most + 1][design.width];
        for (int i = 0; i < design.rows; i++) {
            hazard.addScore(i, sweep.weights()[i], scores[units[i]]);
        }
        double[] errors = new double[design.width];
        for (double[] score : scores) {
            for (int j = 0; j < design.width; j++) {
                double influence = 0;
                for (int k = 0; k < design.width; k++) {
                    influence += inverse[j][k] * score[k];
                }
                errors[j] += influence * influence;
            }
        }
        for (int j = 0; j < errors.length; j++) {
            errors[j] = Math.sqrt(errors[j]);
        }
        return errors;
    }
}
