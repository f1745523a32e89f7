package dev.injectorplanner.core.defect;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.PredictiveLife;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;

/**
 * The cheapest age at which to replace a sound injector whose signs are watched: least of [planned x still in + failure x failed
 * + alone x taken out for its signs] / mean use, over the age. Where signs show nothing this is age replacement. Source:
 * Barlow and Hunter (1960), Operations Research 8:90-100, by renewal reward, with a second way to end.
 */
public final class WatchedReplacement {
    private static final int STEPS_A_LIFE = 300;
    private static final double PAYS = 1e-4;

    private WatchedReplacement() {}

    /**
     * The best age for new units.
     *
     * @param planned cost of a planned replacement, above 0
     * @param alone cost of one that its signs ask for, in a visit by itself
     * @param failure cost of a failure in service
     * @param showsPerUse rate at which a defect shows and the injector is taken out
     */
    public static AgeReplacementPolicy best(
            DefectModel model, PredictiveLife life, double planned, double alone, double failure, double showsPerUse) {
        Require.positive("planned cost", planned);
        Require.positive("failure cost", failure);
        FailurePath path = new FailurePath(model, life, 0, 0, showsPerUse);
        double step = life.wear(DefectModel.middle(life)).scale() / STEPS_A_LIFE;
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        double rate = least;
        while (path.alive() > 1e-4 && path.age() < life.longestLife()) {
            path.goOn(step);
            rate = (planned * path.alive() + failure * path.failed() + alone * path.takenOut()) / path.aliveUse();
            if (rate < least) {
                least = rate;
                at = path.age();
            }
        }
        boolean pays = least < rate * (1 - PAYS);
        return new AgeReplacementPolicy(pays ? at : null, Math.min(least, rate), rate);
    }
}
