package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.check.Require;

/**
 * How far and how often to look ahead.
 *
 * @param months months, 1 to 60, the running one counted
 * @param runs runs that the bands are taken from, 20 to 10,000
 * @param seed the same gives the same figures
 * @param threads runs at once, 1 or more; the figures do not depend on it
 */
public record OutlookRequest(int months, int runs, long seed, int threads) {
    public OutlookRequest {
        Require.within("months", months, 1, 60);
        Require.within("runs", runs, 20, 10_000);
        Require.within("threads", threads, 1, 256);
    }

    /** A year ahead, 200 runs. */
    public static OutlookRequest year(int threads) {
        return new OutlookRequest(12, 200, 1, threads);
    }
}
