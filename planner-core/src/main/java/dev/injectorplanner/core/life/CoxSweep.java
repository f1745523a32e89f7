package dev.injectorplanner.core.life;

import java.util.Arrays;

/**
 * One sweep from the last failure back to the first, with the sums over the units at risk (start &lt; time &lt;= stop)
 * carried along. Tied failures by Efron (1977): the k-th of d tied failures sees the others lowered by k / d.
 */
final class CoxSweep {
    /** What is told of each tied failure at each failure time. */
    interface Listener {
        /**
         * Told once for each failure.
         *
         * @param time the failure time; times come in descending order
         * @param fraction k / d
         * @param total sum of exp(predictor - shift) over those at risk, tied failures lowered by the fraction
         * @param mean mean of the scaled covariates under those weights
         */
        void failure(double time, int ties, double fraction, double total, double[] mean);
    }

    private static final double LOST_DIGITS = 1e-5;

    private final CoxDesign design;
    private final double[] weights;
    private final double shift;
    private final double[] predictors;
    private final int width;
    private double zeroth;
    private double peak;
    private final double[] first;
    private final double[][] second;
    private double tiedZeroth;
    private final double[] tiedFirst;
    private final double[][] tiedSecond;
    private final double[] mean;

    int failures;
    double logLikelihood;
    final double[] score;
    final double[][] information;

    CoxSweep(CoxDesign design, double[] beta) {
        this.design = design;
        width = design.width;
        predictors = design.predictors(beta);
        weights = new double[design.rows];
        double most = Double.NEGATIVE_INFINITY;
        for (double predictor : predictors) {
            most = Math.max(most, predictor);
        }
        shift = most;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(predictors[i] - shift);
        }
        first = new double[width];
        second = new double[width][width];
        tiedFirst = new double[width];
        tiedSecond = new double[width][width];
        mean = new double[width];
        score = new double[width];
        information = new double[width][width];
    }

    double shift() {
        return shift;
    }

    double[] weights() {
        return weights;
    }

    double[] predictors() {
        return predictors;
    }

    CoxSweep run(Listener listener) {
        int nextStop = design.rows - 1;
        int nextStart = design.rows - 1;
        while (nextStop >= 0) {
            double time = design.stops[design.byStop[nextStop]];
            int ties = 0;
            clearTied();
            while (nextStop >= 0 && design.stops[design.byStop[nextStop]] == time) {
                int row = design.byStop[nextStop--];
                add(row, 1);
                if (design.records.isEvent(row)) {
                    addTied(row);
                    ties++;
                }
            }
            while (nextStart >= 0 && design.starts[design.byStart[nextStart]] >= time) {
                add(design.byStart[nextStart--], -1);
            }
            if (zeroth < LOST_DIGITS * peak) {
                addAgain(nextStop + 1, time);
            }
            for (int k = 0; k < ties; k++) {
                fail(time, ties, (double) k / ties, listener);
            }
        }
        return this;
    }

    /** Units that left may have weighed this much that what they leave behind is rounding: the sums are made again. */
    private void addAgain(int fromStop, double time) {
        zeroth = 0;
        peak = 0;
        Arrays.fill(first, 0);
        for (double[] row : second) {
            Arrays.fill(row, 0);
        }
        for (int i = fromStop; i < design.rows; i++) {
            if (design.starts[design.byStop[i]] < time) {
                add(design.byStop[i], 1);
            }
        }
    }

    private void clearTied() {
        tiedZeroth = 0;
        for (int j = 0; j < width; j++) {
            tiedFirst[j] = 0;
            Arrays.fill(tiedSecond[j], 0);
        }
    }

    private void add(int row, int sign) {
        double weight = sign * weights[row];
        zeroth += weight;
        peak = Math.max(peak, zeroth);
        double[] x = design.scaled[row];
        for (int j = 0; j < width; j++) {
            double weighted = weight * x[j];
            first[j] += weighted;
            for (int k = 0; k <= j; k++) {
                second[j][k] += weighted * x[k];
            }
        }
    }

    private void addTied(int row) {
        double weight = weights[row];
        tiedZeroth += weight;
        failures++;
        logLikelihood += predictors[row];
        double[] x = design.scaled[row];
        for (int j = 0; j < width; j++) {
            score[j] += x[j];
            tiedFirst[j] += weight * x[j];
            for (int k = 0; k <= j; k++) {
                tiedSecond[j][k] += weight * x[j] * x[k];
            }
        }
    }

    private void fail(double time, int ties, double fraction, Listener listener) {
        double total = zeroth - fraction * tiedZeroth;
        logLikelihood -= Math.log(total) + shift;
        for (int j = 0; j < width; j++) {
            mean[j] = (first[j] - fraction * tiedFirst[j]) / total;
            score[j] -= mean[j];
            for (int k = 0; k <= j; k++) {
                double part = (second[j][k] - fraction * tiedSecond[j][k]) / total - mean[j] * mean[k];
                information[j][k] += part;
                if (k != j) {
                    information[k][j] += part;
                }
            }
        }
        listener.failure(time, ties, fraction, total, mean);
    }
}
