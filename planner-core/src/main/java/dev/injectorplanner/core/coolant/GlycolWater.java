package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.units.Figures;
import java.util.OptionalDouble;

/**
 * Ethylene glycol in water by percent of volume: freezing point, share of mass, density. Percent of volume is the pure
 * glycol before mixing against both liquids before mixing, as in the ASHRAE table; concentrate counts as pure glycol.
 *
 * <p>Freezing points come from two published curves, and the warmer of the two is given: a table of ASHRAE (Handbook
 * Fundamentals 2001, chapter 21, rows of 0 to 60 percent by mass, straight lines between) and the correlation of
 * Melinder (2010). They lie up to 2.9 K apart, the ASHRAE table being the warmer nearly everywhere.
 */
public final class GlycolWater {
    /** Both curves end at 60 percent by mass, which is this much by volume. */
    public static final double CURVES_END_PERCENT = AshraeTable.LAST_VOLUME_PERCENT;

    /**
     * Up to this strength the freezing point at {@link #CURVES_END_PERCENT} is given: the true one is lower still, so
     * that is the cautious figure. Beyond it no figure is given; the freezing point rises again further on.
     */
    public static final double FIGURES_END_PERCENT = 60;

    private static final int HALVINGS = 60;
    private static final double GLYCOL = 1_113.2;
    private static final double WATER = 998.2;

    private GlycolWater() {}

    /**
     * The freezing point, the warmer of the two curves.
     *
     * @param volumePercent 0 to 100
     * @return degrees C, 0 or below; empty above {@link #FIGURES_END_PERCENT}
     */
    public static OptionalDouble findFreezingPointC(double volumePercent) {
        Require.within("glycol_percent", volumePercent, 0, 100);
        return volumePercent > FIGURES_END_PERCENT ? OptionalDouble.empty() : OptionalDouble.of(curve(volumePercent));
    }

    private static double curve(double volumePercent) {
        double within = Math.min(volumePercent, CURVES_END_PERCENT);
        return Math.min(0, Math.max(ashraeC(within), melinderC(within)));
    }

    /** Freezing point of the ASHRAE table alone, degrees C. {@code volumePercent} 0 to {@link #CURVES_END_PERCENT}. */
    public static double ashraeC(double volumePercent) {
        return AshraeTable.freezingC(volumePercent);
    }

    /** Freezing point of Melinder's correlation alone, degrees C. {@code volumePercent} as above. */
    public static double melinderC(double volumePercent) {
        return Melinder.freezingC(massPercent(volumePercent) / 100);
    }

    /** Which of the two curves gives the figure at a strength. */
    public static String curveUsed(double volumePercent) {
        double within = Math.min(volumePercent, CURVES_END_PERCENT);
        return ashraeC(within) >= melinderC(within) ? "ASHRAE 2001" : "Melinder 2010";
    }

    /**
     * The least strength that protects to a temperature.
     *
     * @param protectToC degrees C
     * @return percent by volume, 0 to {@link #CURVES_END_PERCENT}
     * @throws InvalidValueException where no strength within the published curves protects so far
     */
    public static double percentFor(double protectToC) {
        double coldest = curve(CURVES_END_PERCENT);
        if (!(protectToC >= coldest && Double.isFinite(protectToC))) {
            throw new InvalidValueException(
                    "protect_to_c",
                    Require.plain(protectToC),
                    "is below the range of the published freezing points: "
                            + Require.plain(coldest)
                            + " C at " + Require.plain(CURVES_END_PERCENT) + " % by volume",
                    "ask for " + Require.plain(coldest) + " C or warmer, and keep the truck plugged in below that");
        }
        double low = 0;
        double high = CURVES_END_PERCENT;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (curve(middle) <= protectToC) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return protectToC >= 0 ? 0 : high;
    }

    /**
     * Percent by mass: by the ASHRAE table up to 57.8 percent by volume, beyond by the densities of the pure liquids at
     * 20 C (1,113.2 and 998.2 kg/m3), which differ from the table by less than half a percent.
     */
    public static double massPercent(double volumePercent) {
        Require.within("glycol_percent", volumePercent, 0, 100);
        return volumePercent <= CURVES_END_PERCENT
                ? AshraeTable.massPercent(volumePercent)
                : 100 * GLYCOL * volumePercent / (GLYCOL * volumePercent + WATER * (100 - volumePercent));
    }

    /** Density at 20 C, kg a litre: the ASHRAE table, Melinder lies within 0.6 percent. */
    public static double kgPerLitre(double volumePercent) {
        return AshraeTable.kgPerLitre(Require.within("glycol_percent", volumePercent, 0, 100));
    }

    /** Where the figures come from and how far they reach, for a sheet. */
    public static String basis() {
        return "freezing points by volume percent: the warmer of ASHRAE (Handbook Fundamentals 2001, chapter 21) and"
                + " Melinder (2010), which differ by up to 2.9 K; both reach to "
                + Figures.tenths(CURVES_END_PERCENT) + " % by volume; from there to 60 % the figure for "
                + Figures.tenths(CURVES_END_PERCENT) + " % is used, which is warmer; none is given above 60 %";
    }
}
