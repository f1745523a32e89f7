package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.check.Require;

/**
 * How far a search goes.
 *
 * @param work the most work for each independent part of a request; a unit is about a second of one core of 2020, counted
 *     in steps and not by the clock, so that it ends at the same place everywhere
 * @param enoughGap the search ends when the cost is proven to be within this share of the best (0.0002 is 0.02 %)
 * @param threads threads it may use, 1 or more; the answer does not depend on it
 * @param seed where its random choices start
 */
public record SearchLimits(double work, double enoughGap, int threads, long seed) {
    /** For one depot's plan. */
    public static final SearchLimits USUAL = new SearchLimits(6, 2e-4, 2, 1);

    /** For a change that someone waits for. */
    public static final SearchLimits QUICK = new SearchLimits(2, 2e-4, 2, 1);

    private static final int MANY_PARTS = 8;
    private static final double WIDER_GAP = 5e-4;

    public SearchLimits {
        Require.notNegative("work", work);
        Require.within("enough_gap", enoughGap, 0, 1);
        Require.within("threads", threads, 1, 256);
    }

    /**
     * For each of this many independent parts: of more than eight, each may stop at 0.05 %, and after half the work, since the
     * gap of the whole is no wider than the widest of its parts, all of which save.
     */
    SearchLimits forEachOf(int parts) {
        return parts <= MANY_PARTS ? this : new SearchLimits(work / 2, Math.max(enoughGap, WIDER_GAP), threads, seed);
    }

    /** For a search that starts from a good schedule: a quarter of the work. */
    SearchLimits shorter() {
        return new SearchLimits(work / 4, enoughGap, threads, seed);
    }
}
