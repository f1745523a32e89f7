package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.Require;

/**
 * Early failures beside wear: a share of new units has a flaw and fails after a short time, exponentially spread, unless wear
 * comes first. Survival is (1 - share x (1 - exp(-age / mean))) times that of wear. Source: Chan and Meeker (1999), A
 * failure-time model for infant-mortality and wearout failure modes, IEEE Transactions on Reliability 48:377-387, with an
 * exponential early mode.
 *
 * @param share share of new units with the flaw, 0 to below 1
 * @param meanAge mean age at which they fail, above 0, in the unit of the ages
 */
public record EarlyFailures(double share, double meanAge) {
    /** No early failures. */
    public static final EarlyFailures NONE = new EarlyFailures(0, 1);

    public EarlyFailures {
        Require.within("share of early failures", share, 0, 0.999);
        Require.positive("mean age of early failures", meanAge);
    }

    /** Chance that no early failure has come by an age, 0..1. */
    public double survival(double age) {
        return 1 + share * Math.expm1(-age / meanAge);
    }

    /** Early failures per unit of age among units alive at {@code age}. */
    public double hazard(double age) {
        return share == 0 ? 0 : share / meanAge * Math.exp(-age / meanAge) / survival(age);
    }

    /**
     * The hazard of the defects that early failures come of: as many, sooner by their mean delay. Defects that arise at once
     * are spread over a quarter of the mean age at the least.
     *
     * @param delay mean time from a defect to its failure, in the unit of the ages
     */
    public double arising(double age, double delay) {
        return share == 0 ? 0 : new EarlyFailures(share, Math.max(meanAge - delay, 0.25 * meanAge)).hazard(age);
    }

    /** Integral of the hazard from {@code age} to {@code age + next}. */
    public double cumulativeHazard(double age, double next) {
        if (share == 0) {
            return 0;
        }
        double gone = share * Math.exp(-age / meanAge) * Math.expm1(-next / meanAge);
        return -Math.log1p(gone / survival(age));
    }
}
