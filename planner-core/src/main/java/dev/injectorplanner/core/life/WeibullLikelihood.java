package dev.injectorplanner.core.life;

import org.jspecify.annotations.Nullable;

/**
 * Log-likelihood of Weibull records in u = log(shape) and v = log(scale / largest exit), with right censoring, delayed
 * entry and counts: each row gives density or survival at its exit over survival at its entry (Klein and Moeschberger
 * 2003, section 3.5). The data enter only by three sums that depend on the shape alone, so a new scale costs nothing.
 */
final class WeibullLikelihood {
    private final double unit;
    private final double[] exitLogs;
    private final double @Nullable [] entryLogs;
    private final double @Nullable [] weights;
    private final double events;
    private final double eventLogs;
    private @Nullable Sums lastSums;

    WeibullLikelihood(LifeRecords records) {
        int rows = records.size();
        unit = records.largestExit();
        exitLogs = new double[rows];
        entryLogs = records.hasDelayedEntry() ? new double[rows] : null;
        weights = records.hasWeights() ? new double[rows] : null;
        double failed = 0;
        double failedLogs = 0;
        for (int i = 0; i < rows; i++) {
            exitLogs[i] = Math.log(records.exit(i) / unit);
            if (entryLogs != null) {
                entryLogs[i] = Math.log(records.entry(i) / unit);
            }
            double weight = records.count(i);
            if (weights != null) {
                weights[i] = weight * records.hazard(i);
            }
            if (records.isEvent(i)) {
                failed += weight * records.eventShare(i);
                failedLogs += weight * records.eventShare(i) * exitLogs[i];
            }
        }
        events = failed;
        eventLogs = failedLogs;
    }

    /** The age that v counts from: the largest exit. */
    double unit() {
        return unit;
    }

    double events() {
        return events;
    }

    /** Sum over failures of log(age / largest exit): 0 exactly where all failed at the largest age seen. */
    double eventLogs() {
        return eventLogs;
    }

    /** Sums over rows of x^j exp(shape x), x = log(age / largest exit), those at entry taken off. */
    record Sums(double shape, double zeroth, double first, double second) {
        double mean() {
            return first / zeroth;
        }

        /** Second derivative of log(zeroth) in the shape; with late entries it may be below zero. */
        double curvature() {
            return second / zeroth - mean() * mean();
        }
    }

    Sums sums(double shape) {
        Sums last = lastSums;
        if (last != null && last.shape == shape) {
            return last;
        }
        double zeroth = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < exitLogs.length; i++) {
            double x = exitLogs[i];
            double power = Math.exp(shape * x);
            double powerX = power * x;
            double zero = power;
            double one = powerX;
            double two = powerX * x;
            if (entryLogs != null && entryLogs[i] > Double.NEGATIVE_INFINITY) {
                double entry = entryLogs[i];
                double entryPower = Math.exp(shape * entry);
                zero -= entryPower;
                one -= entryPower * entry;
                two -= entryPower * entry * entry;
            }
            double weight = weights == null ? 1 : weights[i];
            zeroth += weight * zero;
            first += weight * one;
            second += weight * two;
        }
        Sums sums = new Sums(shape, zeroth, first, second);
        lastSums = sums;
        return sums;
    }

    /** The v that is most likely for a shape: closed form. */
    double bestV(double shape) {
        return Math.log(sums(shape).zeroth / events) / shape;
    }

    /** A v near which the likelihood falls off for a shape, or {@code other} if that is larger and nothing failed. */
    double startV(double shape, double other) {
        if (events > 0) {
            return bestV(shape);
        }
        return Math.max(other, Math.log(shape * sums(shape).zeroth) / shape);
    }

    /** Log-likelihood on the scale of the ages themselves, with its slopes and curvatures. */
    Surface at(double u, double v) {
        double shape = Math.exp(u);
        Sums s = sums(shape);
        double factor = Math.exp(-shape * v);
        double e0 = factor * s.zeroth;
        double e1 = factor * shape * (s.first - v * s.zeroth);
        double e2 = factor * shape * shape * (s.second - 2 * v * s.first + v * v * s.zeroth);
        double z = shape * (eventLogs - events * v);
        double value = events * u + z - eventLogs - events * Math.log(unit) - e0;
        return new Surface(
                value,
                events + z - e1,
                shape * (e0 - events),
                z - e1 - e2,
                shape * (e0 + e1 - events),
                -shape * shape * e0);
    }

    /** Value, slopes and curvatures of a function of two variables. */
    record Surface(double value, double du, double dv, double duu, double duv, double dvv) {}
}
