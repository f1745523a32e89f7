package dev.injectorplanner.core.replay.outlook;

import java.util.Arrays;

/**
 * A figure that is not certain.
 *
 * @param mean its mean
 * @param low one run in ten stays below it
 * @param median as many runs above as below
 * @param high one run in ten goes beyond it
 */
public record Band(double mean, double low, double median, double high) {
    /** Nothing, for certain. */
    public static final Band NONE = new Band(0, 0, 0, 0);

    /** Of simulated values, by linear interpolation between order statistics (type 7 of Hyndman and Fan 1996). */
    static Band of(double[] values) {
        if (values.length == 0) {
            return NONE;
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Band(
                Arrays.stream(sorted).average().orElse(0),
                quantile(sorted, 0.1),
                quantile(sorted, 0.5),
                quantile(sorted, 0.9));
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
