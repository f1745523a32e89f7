package dev.injectorplanner.core.numeric;

import java.util.function.DoubleUnaryOperator;

/** Roots and minima of functions of one variable, bracketed, so that they cannot run away. */
public final class Search {
    private static final double GOLDEN = 0.5 * (3 - Math.sqrt(5));
    private static final int MOST_STEPS = 200;

    private Search() {}

    /**
     * Root of a continuous function between two points where its signs differ, by the Illinois form of regula falsi
     * with bisection as safeguard, to the last few digits.
     *
     * @throws IllegalArgumentException if the signs at the ends are the same or a value is NaN
     */
    public static double root(DoubleUnaryOperator f, double low, double high) {
        return root(f, low, high, 0);
    }

    /** As {@link #root(DoubleUnaryOperator, double, double)}, to a relative error of {@code tolerance}. */
    public static double root(DoubleUnaryOperator f, double low, double high, double tolerance) {
        double a = low;
        double b = high;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        if (!(fa < 0 && fb > 0) && !(fa > 0 && fb < 0)) {
            throw new IllegalArgumentException(
                    "no change of sign between " + low + " (" + fa + ") and " + high + " (" + fb + ")");
        }
        for (int step = 0; step < MOST_STEPS && Math.abs(b - a) > width(a, b, tolerance); step++) {
            double secant = b - fb * (b - a) / (fb - fa);
            double middle = 0.5 * (a + b);
            boolean inside = secant > Math.min(a, b) && secant < Math.max(a, b);
            double next = inside && step % 4 != 3 ? secant : middle;
            double value = f.applyAsDouble(next);
            if (value == 0) {
                return next;
            }
            if (value > 0 == fb > 0) {
                fa *= 0.5;
            } else {
                a = b;
                fa = fb;
            }
            b = next;
            fb = value;
        }
        return b;
    }

    private static double width(double a, double b, double tolerance) {
        double size = Math.max(Math.abs(a), Math.abs(b));
        return Math.max(2 * Math.ulp(size), tolerance * size);
    }

    /**
     * Where a function is least between two points, by golden section after a scan: the least of the scanned points and
     * its two neighbours bracket the search, so a function with several valleys gives its lowest scanned one.
     *
     * @param low  above zero; the scan goes in equal ratios from here
     * @param high above {@code low}
     */
    public static double leastByRatio(DoubleUnaryOperator f, double low, double high, int scanned) {
        double ratio = Math.log(high / low) / scanned;
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= scanned; i++) {
            double value = f.applyAsDouble(low * Math.exp(ratio * i));
            if (value < least) {
                least = value;
                best = i;
            }
        }
        double from = low * Math.exp(ratio * Math.max(0, best - 1));
        double to = Math.min(high, low * Math.exp(ratio * Math.min(scanned, best + 1)));
        return golden(f, from, to);
    }

    private static double golden(DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        double x = a + GOLDEN * (b - a);
        double y = b - GOLDEN * (b - a);
        double fx = f.applyAsDouble(x);
        double fy = f.applyAsDouble(y);
        while (b - a > 1e-10 * Math.abs(b)) {
            if (fx <= fy) {
                b = y;
                y = x;
                fy = fx;
                x = a + GOLDEN * (b - a);
                fx = f.applyAsDouble(x);
            } else {
                a = x;
                x = y;
                fx = fy;
                y = b - GOLDEN * (b - a);
                fy = f.applyAsDouble(y);
            }
        }
        return 0.5 * (a + b);
    }
}
