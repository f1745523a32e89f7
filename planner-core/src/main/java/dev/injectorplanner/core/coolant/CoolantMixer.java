package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.units.Figures;
import java.util.OptionalDouble;

/**
 * Mixes concentrate and water with what stays in the block. Glycol is balanced by volume, C1 V1 = C2 V2 (volumes add
 * up; in truth the mix shrinks by under 1 percent, which the level check makes good).
 *
 * <p>With a system of C litres at p percent of which w litres are exchanged, a target of t percent takes
 * x = (C t - (C - w) p) / 100 litres of concentrate and w - x of water, where both are zero or more. The least exchange
 * that can do it is C (t - p) / (100 - p) of concentrate upwards and C (p - t) / p of water downwards.
 */
public final class CoolantMixer {
    /** Heavy-duty concentrate is made for 40 to 60 percent by volume in water (ASTM D6210, scope). */
    public static final double LEAST_PERCENT = 40;

    /** As {@link #LEAST_PERCENT}. */
    public static final double MOST_PERCENT = 60;

    private static final double ROUNDING = 1e-9;

    private final double capacityLitres;
    private final double drainedLitres;
    private final double nowPercent;
    private final boolean anyStrength;

    /**
     * @param capacityLitres what the system holds, above 0
     * @param drainedLitres what comes out, 0 to {@code capacityLitres}
     * @param nowPercent glycol now, percent by volume
     * @param anyStrength whether the site allows targets outside 40 to 60 percent
     */
    public CoolantMixer(double capacityLitres, double drainedLitres, double nowPercent, boolean anyStrength) {
        this.capacityLitres = Require.positive("capacity_l", capacityLitres);
        this.drainedLitres = Require.notNegative("drained_l", drainedLitres);
        if (drainedLitres > capacityLitres) {
            throw new InvalidValueException(
                    "drained_l",
                    Require.plain(drainedLitres),
                    "is more than the system holds, " + Require.plain(capacityLitres) + " l",
                    "correct whichever is wrong");
        }
        this.nowPercent = Require.within("now_percent", nowPercent, 0, 100);
        this.anyStrength = anyStrength;
    }

    /**
     * The strength to aim at for a protection temperature: the least that protects, and no less than 40 percent, below
     * which the concentrate's additives are too thin, unless the site allows any strength.
     */
    public static double targetFor(double protectToC, boolean anyStrength) {
        double percent = GlycolWater.percentFor(protectToC);
        return anyStrength ? percent : Math.max(LEAST_PERCENT, percent);
    }

    /**
     * The strength to aim at here for a protection temperature. Coolant that is stronger than needed already is kept as
     * it is where it goes back in, and thinned no further than water can where it is renewed: it protects all the same.
     *
     * @param reuse whether the drained coolant goes back in
     */
    public double targetToProtect(double protectToC, boolean reuse) {
        double needed = targetFor(protectToC, anyStrength);
        if (nowPercent <= needed) {
            return needed;
        }
        boolean allowed = anyStrength || nowPercent <= MOST_PERCENT;
        return reuse && allowed ? nowPercent : Math.max(needed, thinnest());
    }

    /** The strength with nothing but water poured. */
    private double thinnest() {
        return (capacityLitres - drainedLitres) * nowPercent / capacityLitres;
    }

    /**
     * New coolant for all that was drained; the old is waste.
     *
     * @param targetPercent glycol wanted, percent by volume
     * @throws InvalidValueException where the target cannot be reached so, with the drain that would do it
     */
    public CoolantMix renew(double targetPercent) {
        return exchange(drainedLitres, targetPercent);
    }

    /**
     * Drained coolant goes back in, except what is lost and what must make room to reach the target.
     *
     * @param lostShare share of the drained coolant that does not come back (spills, hoses), 0 to 1
     * @throws InvalidValueException as {@link #renew}
     */
    public CoolantMix reuse(double targetPercent, double lostShare) {
        double lost = drainedLitres * Require.within("lost_share", lostShare, 0, 1);
        double least = leastExchangeLitres(capacityLitres, nowPercent, targetPercent);
        return exchange(Math.min(drainedLitres, Math.max(lost, least)), targetPercent);
    }

    /**
     * The least litres to exchange for pure concentrate, or pure water, to go from one strength to another; infinite
     * where none would do.
     */
    public static double leastExchangeLitres(double capacityLitres, double nowPercent, double targetPercent) {
        if (targetPercent == nowPercent) {
            return 0;
        }
        return targetPercent > nowPercent
                ? capacityLitres * (targetPercent - nowPercent) / (100 - nowPercent)
                : capacityLitres * (nowPercent - targetPercent) / nowPercent;
    }

    private CoolantMix exchange(double exchanged, double targetPercent) {
        strength(targetPercent);
        double concentrate = (capacityLitres * targetPercent - (capacityLitres - exchanged) * nowPercent) / 100;
        if (concentrate > exchanged + ROUNDING || concentrate < -ROUNDING) {
            throw outOfReach(targetPercent);
        }
        concentrate = Math.min(exchanged, Math.max(0, concentrate));
        double after = ((capacityLitres - exchanged) * nowPercent + 100 * concentrate) / capacityLitres;
        OptionalDouble freezing = GlycolWater.findFreezingPointC(Math.min(100, after));
        return new CoolantMix(
                capacityLitres,
                drainedLitres,
                nowPercent,
                concentrate,
                exchanged - concentrate,
                drainedLitres - exchanged,
                exchanged,
                exchanged * GlycolWater.kgPerLitre(nowPercent),
                after,
                freezing.isPresent() ? Double.valueOf(freezing.getAsDouble()) : null);
    }

    private void strength(double targetPercent) {
        Require.within("target_percent", targetPercent, 0, 100);
        if (!anyStrength && (targetPercent < LEAST_PERCENT || targetPercent > MOST_PERCENT)) {
            String why = targetPercent < LEAST_PERCENT
                    ? "below that, the additives are too diluted and the engine may corrode or freeze"
                    : "above that, the coolant carries less heat and its additives may drop out";
            throw new InvalidValueException(
                    "target_percent",
                    Require.plain(targetPercent),
                    "is outside 40 to 60 % by volume, the range of heavy-duty concentrate (ASTM D6210): " + why,
                    "choose 40 to 60, or allow any strength in the site settings if the engine maker does");
        }
    }

    private InvalidValueException outOfReach(double targetPercent) {
        double least = leastExchangeLitres(capacityLitres, nowPercent, targetPercent);
        boolean up = targetPercent > nowPercent;
        double reach = up
                ? ((capacityLitres - drainedLitres) * nowPercent + 100 * drainedLitres) / capacityLitres
                : thinnest();
        String tenths = Require.plain(Math.ceil(least * 10 - ROUNDING) / 10);
        return new InvalidValueException(
                "target_percent",
                Require.plain(Math.rint(targetPercent * 100) / 100),
                "cannot be reached: with " + Figures.litres(drainedLitres) + " of " + Figures.litres(capacityLitres)
                        + " drained, " + Figures.tenths(nowPercent) + " % becomes "
                        + (up ? "at most " : "at least ") + Figures.tenths(reach) + " %, all "
                        + (up ? "concentrate" : "water"),
                "drain " + tenths + " l or more and fill " + (up ? "concentrate" : "water"));
    }
}
