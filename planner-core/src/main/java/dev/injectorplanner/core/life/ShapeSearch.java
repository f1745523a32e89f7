package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/** The shape at which the profile likelihood is greatest: Newton on log(shape), held inside a bracket. */
final class ShapeSearch {
    private static final double LOWEST = Math.log(0.02);
    private static final double HIGHEST = Math.log(1e5);
    private static final double SMALLEST_V = -200;
    private static final int MOST_STEPS = 200;

    private ShapeSearch() {}

    static double logShape(LifeRecords records, WeibullLikelihood likelihood) {
        refuseWithoutMaximum(records, likelihood);
        double meanLog = likelihood.eventLogs() / likelihood.events();
        double low = LOWEST;
        double high = HIGHEST;
        double u = Math.min(Math.log(20), Math.max(Math.log(0.3), -Math.log(-meanLog)));
        for (int step = 0; step < MOST_STEPS; step++) {
            double shape = Math.exp(u);
            WeibullLikelihood.Sums sums = likelihood.sums(shape);
            double rest = shape * (meanLog - sums.mean());
            double slope = 1 + rest;
            double curve = rest - shape * shape * sums.curvature();
            if (slope > 0) {
                low = u;
            } else {
                high = u;
            }
            double move = curve < 0 ? -slope / curve : Math.signum(slope);
            if (Math.abs(move) < 1e-7) {
                return u + move;
            }
            double next = u + Math.max(-1.5, Math.min(1.5, move));
            if (next <= low || next >= high) {
                next = 0.5 * (low + high);
            }
            u = next;
            refuseAtEdge(u);
        }
        return u;
    }

    private static void refuseWithoutMaximum(LifeRecords records, WeibullLikelihood likelihood) {
        if (records.eventCount() == 0) {
            throw new NoEstimateException(
                    "There is no failure among the " + records.suspensionCount()
                            + " units: ages without a failure bound the life from below but do not give its shape and"
                            + " scale",
                    "add records of failed units, or use a stated prior until the first failures are in");
        }
        if (likelihood.eventLogs() == 0) {
            throw new NoEstimateException(
                    (records.eventCount() == 1 ? "The one failure happened" : "All failures happened")
                            + " at the largest age in the records, "
                            + Require.plain(likelihood.unit())
                            + ": nothing shows how failures spread over age, and the shape would be infinite",
                    "add failures at other ages, or units that have outlived this one");
        }
    }

    private static void refuseAtEdge(double u) {
        if (u < LOWEST + 1e-9) {
            throw tooEarly();
        }
        if (u > HIGHEST - 1e-9) {
            throw new NoEstimateException(
                    "All failures happened at practically the same age: the shape would be beyond 100000",
                    "check the ages, or add failures at other ages");
        }
    }

    /** Refuses a scale so far below all ages seen that it is no age at all. */
    static void refuseTinyScale(double v) {
        if (v < SMALLEST_V) {
            throw tooEarly();
        }
    }

    private static NoEstimateException tooEarly() {
        return new NoEstimateException(
                "Failures come so early after the late entries that no Weibull with a shape of 0.02 or more fits",
                "check the entry ages, or add units that were watched from new");
    }
}
