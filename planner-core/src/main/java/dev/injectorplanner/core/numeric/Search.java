package dev.injectorplanner.core.numeric;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** Roots and minima of functions of one variable, bracketed, so that they cannot run away. */
public final class Search {
    private static final int MOST_EVALUATIONS = 300;
    private static final int ORDER = 5;
    private static final double LAST_DIGITS = 2 * Math.ulp(1.0);
    private static final double RELATIVE_WIDTH = 1e-10;

    private Search() {}

    /**
     * Root of a continuous function between two points where its signs differ, by Brent's method with
     * inverse interpolation of a higher order, to the last few digits.
     *
     * @throws IllegalArgumentException if the signs at the ends are the same or a value is NaN
     */
    public static double root(DoubleUnaryOperator f, double low, double high) {
        return root(f, low, high, 0);
    }

    /** As {@link #root(DoubleUnaryOperator, double, double)}, to a relative error of {@code tolerance}. */
    public static double root(DoubleUnaryOperator f, double low, double high, double tolerance) {
        double fLow = f.applyAsDouble(low);
        double fHigh = f.applyAsDouble(high);
        if (fLow == 0 || fHigh == 0) {
            return fLow == 0 ? low : high;
        }
        if (!(fLow < 0 && fHigh > 0) && !(fLow > 0 && fHigh < 0)) {
            throw new IllegalArgumentException(
                    "no change of sign between " + low + " (" + fLow + ") and " + high + " (" + fHigh + ")");
        }
        return new BracketingNthOrderBrentSolver(Math.max(tolerance, LAST_DIGITS), Double.MIN_NORMAL, 0, ORDER)
                .solve(MOST_EVALUATIONS, f::applyAsDouble, Math.min(low, high), Math.max(low, high));
    }

    /**
     * Where a function is least between two points, by Brent's method after a scan: the least of the scanned points and
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
        return new BrentOptimizer(RELATIVE_WIDTH, Double.MIN_NORMAL)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(f::applyAsDouble),
                        new SearchInterval(from, to))
                .getPoint();
    }
}
