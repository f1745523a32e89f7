package dev.injectorplanner.core.coolant;

/**
 * Freezing points and densities of ethylene glycol in water. Source: ASHRAE Handbook Fundamentals 2001, chapter 21, tables
 * of aqueous ethylene glycol, as digitised in open data files. Straight lines between the rows.
 */
final class AshraeTable {
    static final double LAST_VOLUME_PERCENT = 57.8;

    private static final double[] MASS_PERCENT = {
        0, 5, 10, 15, 20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60
    };

    private static final double[] VOLUME_PERCENT = {
        0, 4.4, 8.9, 13.6, 18.1, 20.1, 22, 23.9, 25.8, 27.7, 29.6, 31.6, 33.5, 35.5, 37.5, 39.5, 41.5, 43.5, 45.5, 47.6,
        49.6, 51.6, 53.7, 55.7, 57.8
    };

    private static final double[] FREEZING_C = {
        0, -1.4, -3.2, -5.4, -7.8, -8.9, -10.2, -11.4, -12.7, -14.1, -15.4, -17, -18.6, -20.3, -22.3, -24.3, -26.4,
        -28.8, -31.1, -33.8, -36.4, -39.3, -42.6, -45.6, -48.3
    };

    private static final double[] DENSITY_AT_PERCENT = {0, 10, 30, 40, 60, 100};

    /** At 20 C; the ends are the pure liquids. */
    private static final double[] KG_PER_LITRE = {0.9982, 1.01334, 1.04525, 1.05968, 1.08627, 1.1132};

    private AshraeTable() {}

    static double freezingC(double volumePercent) {
        return between(volumePercent, VOLUME_PERCENT, FREEZING_C);
    }

    static double massPercent(double volumePercent) {
        return between(volumePercent, VOLUME_PERCENT, MASS_PERCENT);
    }

    static double kgPerLitre(double volumePercent) {
        return between(volumePercent, DENSITY_AT_PERCENT, KG_PER_LITRE);
    }

    private static double between(double at, double[] ats, double[] values) {
        int above = 1;
        while (above < ats.length - 1 && ats[above] < at) {
            above++;
        }
        double share = (at - ats[above - 1]) / (ats[above] - ats[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }
}
