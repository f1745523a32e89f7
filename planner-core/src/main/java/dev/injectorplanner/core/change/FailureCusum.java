package dev.injectorplanner.core.change;

import dev.injectorplanner.core.check.Require;

/**
 * Failures seen against failures expected, added up week by week: what the weeks so far say for a failure rate that is
 * {@code ratio} times the expected one, never below zero, so that good weeks are forgotten and bad ones are not. Source:
 * risk-adjusted CUSUM, Steiner, Cook, Farewell and Treasure (2000), Biostatistics 1:441-452, in its form for failures in
 * time, Biswas and Kalbfleisch (2008), Statistics in Medicine 27:3382-3406.
 */
public final class FailureCusum {
    private final double ratio;
    private double score;

    /** @param ratio failure rate to be noticed, against the expected one; above 1 */
    public FailureCusum(double ratio) {
        this.ratio = Require.within("ratio", ratio, 1.000_001, 100);
    }

    /**
     * Adds a stretch of time.
     *
     * @param failures failures seen in it, 0 or more
     * @param expected failures expected of the units that were in service, 0 or more
     * @return the score after it, 0 or more, in natural logarithms of a likelihood ratio
     */
    public double add(double failures, double expected) {
        score = Math.max(0, score + failures * Math.log(ratio) - (ratio - 1) * expected);
        return score;
    }

    /** The score now. */
    public double score() {
        return score;
    }
}
