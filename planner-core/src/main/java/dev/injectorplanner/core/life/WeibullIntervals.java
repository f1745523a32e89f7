package dev.injectorplanner.core.life;

/**
 * Intervals of a Weibull fit, each made in two ways.
 *
 * @param level chance of covering the truth in repeated use
 * @param b10 for the age by which a tenth has failed
 */
public record WeibullIntervals(double level, Pair shape, Pair scale, Pair b10) {

    /** From {@code low} (0 where the data leave it open) to {@code high} (infinity where they leave it open). */
    public record Interval(double low, double high) {
        Interval times(double factor) {
            return new Interval(low * factor, high * factor);
        }

        public boolean contains(double value) {
            return low <= value && value <= high;
        }
    }

    /** The normal approximation on the logarithm, and the profile likelihood. */
    public record Pair(Interval fisher, Interval profile) {}
}
