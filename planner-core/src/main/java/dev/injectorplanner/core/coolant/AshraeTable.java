package dev.injectorplanner.core.coolant;

/**
 * Freezing points of ethylene glycol in water. Source: ASHRAE Handbook Fundamentals 2001, chapter 21, table of freezing
 * points of aqueous ethylene glycol, as digitised in open data files. Straight lines between its rows.
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

    private AshraeTable() {}

    static double freezingC(double volumePercent) {
        return between(volumePercent, FREEZING_C);
    }

    static double massPercent(double volumePercent) {
        return between(volumePercent, MASS_PERCENT);
    }

    private static double between(double volumePercent, double[] values) {
        int above = 1;
        while (above < VOLUME_PERCENT.length - 1 && VOLUME_PERCENT[above] < volumePercent) {
            above++;
        }
        double share =
                (volumePercent - VOLUME_PERCENT[above - 1]) / (VOLUME_PERCENT[above] - VOLUME_PERCENT[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }
}
