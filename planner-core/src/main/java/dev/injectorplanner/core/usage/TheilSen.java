package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.check.InvalidValueException;

/**
 * Robust line through points: the slope is the median of the slopes of all pairs (Theil 1950), pairs of one x left out
 * (Sen 1968); the intercept is the median of y - slope x.
 *
 * @param slope y per x
 * @param intercept y at x = 0
 * @param pairs how many pairs told, 1 or more
 */
public record TheilSen(double slope, double intercept, int pairs) {

    /**
     * Fits the line. Takes n(n-1)/2 slopes: meant for some hundreds of points.
     *
     * @param x positions, any order
     * @param y values, as many as {@code x}
     * @throws IllegalArgumentException if fewer than two points differ in x
     */
    public static TheilSen fit(double[] x, double[] y) {
        return fit(x, y, new int[x.length]);
    }

    /** The same from the pairs whose points lie in one segment, for values that cannot be compared across segments. */
    static TheilSen fit(double[] x, double[] y, int[] segment) {
        int n = x.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (segment[i] == segment[j] && x[i] != x[j]) {
                    slopes[pairs++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        if (pairs == 0) {
            throw new InvalidValueException(
                    "x", n + " points", "all points have the same x", "give two or more different ones");
        }
        double slope = Medians.median(slopes, pairs);
        double[] residuals = new double[n];
        for (int i = 0; i < n; i++) {
            residuals[i] = y[i] - slope * x[i];
        }
        return new TheilSen(slope, Medians.median(residuals, n), pairs);
    }
}
