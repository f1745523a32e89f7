package dev.injectorplanner.core.life;

import java.util.Arrays;

/**
 * Baseline hazard steps (Efron form) in ascending time with what the score residuals need beside them (Therneau and
 * Grambsch 2000, section 4.6 and appendix E).
 */
final class CoxHazard {
    private final CoxDesign design;
    private final int width;
    private double[] times = new double[16];
    private double[][] steps = new double[16][];
    private int size;

    /** A row of steps: hazard, hazard x mean (width), the tied part of both, and the mean seen by a failure (width). */
    CoxHazard(CoxDesign design, double[] beta) {
        this.design = design;
        this.width = design.width;
        new CoxSweep(design, beta).run(this::failure);
        times = Arrays.copyOf(times, size);
        steps = Arrays.copyOf(steps, size);
        reverse();
        for (int i = 1; i < size; i++) {
            for (int j = 0; j <= width; j++) {
                steps[i][j] += steps[i - 1][j];
            }
        }
    }

    private void failure(double time, int ties, double fraction, double total, double[] mean) {
        if (size == 0 || times[size - 1] != time) {
            if (size == times.length) {
                times = Arrays.copyOf(times, 2 * size);
                steps = Arrays.copyOf(steps, 2 * size);
            }
            times[size] = time;
            steps[size++] = new double[2 * (width + 1) + width];
        }
        double[] step = steps[size - 1];
        double hazard = 1 / total;
        step[0] += hazard;
        step[width + 1] += fraction * hazard;
        for (int j = 0; j < width; j++) {
            step[1 + j] += hazard * mean[j];
            step[width + 2 + j] += fraction * hazard * mean[j];
            step[2 * (width + 1) + j] += mean[j] / ties;
        }
    }

    private void reverse() {
        for (int i = 0, j = size - 1; i < j; i++, j--) {
            double time = times[i];
            times[i] = times[j];
            times[j] = time;
            double[] step = steps[i];
            steps[i] = steps[j];
            steps[j] = step;
        }
    }

    /** Index of the last failure time at or before {@code time}; -1 before the first. */
    private int last(double time) {
        int found = Arrays.binarySearch(times, time);
        return found >= 0 ? found : -found - 2;
    }

    /** Sum of the steps up to {@code time}, for a unit whose weight is 1. */
    double cumulative(double time) {
        int at = last(time);
        return at < 0 ? 0 : steps[at][0];
    }

    /** Adds the score residual of a row to {@code score}. */
    void addScore(int row, double weight, double[] score) {
        double[] x = design.scaled[row];
        int until = last(design.stops[row]);
        int from = last(design.starts[row]);
        for (int j = 0; j < width; j++) {
            double hazard = part(until, 0) - part(from, 0);
            double hazardMean = part(until, 1 + j) - part(from, 1 + j);
            score[j] -= weight * (x[j] * hazard - hazardMean);
            if (design.records.isEvent(row)) {
                double[] step = steps[until];
                score[j] += x[j] - step[2 * (width + 1) + j];
                score[j] += weight * (x[j] * step[width + 1] - step[width + 2 + j]);
            }
        }
    }

    private double part(int at, int column) {
        return at < 0 ? 0 : steps[at][column];
    }
}
