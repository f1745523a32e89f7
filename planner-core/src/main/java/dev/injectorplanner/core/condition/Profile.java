package dev.injectorplanner.core.condition;

/**
 * How the hazard runs after a day on which an injector clearly shows a defect, or does not: what was seen over what was expected in weeks 1
 * to 4, 5 to 12 and 13 to 26. A defect that shows fails soon or has gone; one that does not show yet needs time to arise.
 *
 * @param early factor on the multiplier in weeks 1 to 4
 * @param middle factor on the multiplier in weeks 5 to 12
 * @param late multiplier itself in weeks 13 to 26, whatever the sign was
 * @param whole factor on the multiplier over weeks 1 to 12 together
 */
record Profile(double early, double middle, double late, double whole) {
    static final int PERIODS = 3;

    /** Last day of each period. */
    static final int[] ENDS = {28, 84, 182};

    /** Until the records are enough. */
    static final Profile FLAT = new Profile(1, 1, 1, 1);

    private static final double SLOW = 10;

    /** From failures seen and expected by period, with ten of each added, so that few failures move it little. */
    static Profile of(double[] seen, double[] expected) {
        return new Profile(
                factor(seen[0], expected[0]),
                factor(seen[1], expected[1]),
                factor(seen[2], expected[2]),
                factor(seen[0] + seen[1], expected[0] + expected[1]));
    }

    private static double factor(double seen, double expected) {
        return (seen + SLOW) / (expected + SLOW);
    }
}
