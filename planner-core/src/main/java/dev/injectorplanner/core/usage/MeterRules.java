package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.units.Units;

/** How a meter reading is judged against the last good one. Pure rules, used at intake to flag rows and here to leave them out. */
public final class MeterRules {
    /** A day at 105 km/h without a stop: no truck does more. */
    public static final double MOST_KM_PER_DAY = 24 * 105.0;

    /** Six digits, then 0 again. */
    public static final double ROLL_OVER_KM = 1_000_000;

    private static final double BUSY_KM_PER_DAY = 1_000;
    private static final double MILES_TOLERANCE = 0.001;

    private MeterRules() {}

    /**
     * Judges an odometer.
     *
     * @param previousKm the last good reading, km
     * @param currentKm this reading, km
     * @param days days between, 0 or more; less than one counts as one, since times of day are often rounded
     * @param replaced whether a person said that the meter was replaced in between
     */
    public static MeterVerdict odometer(double previousKm, double currentKm, double days, boolean replaced) {
        if (replaced) {
            return MeterVerdict.REPLACED;
        }
        double mostKm = MOST_KM_PER_DAY * Math.max(1, days);
        double useKm = currentKm - previousKm;
        if (useKm >= 0) {
            return useKm == 0 ? MeterVerdict.NO_USE : useKm > mostKm ? MeterVerdict.IMPLAUSIBLE : MeterVerdict.ACCEPTED;
        }
        if (previousKm < ROLL_OVER_KM && useKm + ROLL_OVER_KM <= mostKm) {
            return MeterVerdict.ROLL_OVER;
        }
        double asMilesKm = Units.milesToKm(currentKm);
        boolean milesFit = asMilesKm >= previousKm * (1 - MILES_TOLERANCE)
                && asMilesKm <= previousKm + BUSY_KM_PER_DAY * Math.max(1, days);
        return milesFit ? MeterVerdict.MILES_FOR_KM : MeterVerdict.ROLL_BACK;
    }

    /** Judges an engine hour meter, in hours: it cannot run more than 24 hours a day, and does not roll over. */
    public static MeterVerdict engineHours(double previous, double current, double days, boolean replaced) {
        double use = current - previous;
        MeterVerdict untold = use == 0
                ? MeterVerdict.NO_USE
                : use < 0
                        ? MeterVerdict.ROLL_BACK
                        : use > 24 * Math.max(1, days) ? MeterVerdict.IMPLAUSIBLE : MeterVerdict.ACCEPTED;
        return replaced && !untold.usable() ? MeterVerdict.REPLACED : untold;
    }

    /**
     * What to add to a new meter's readings to go on where the old one stopped.
     *
     * @param cumulative the old meter's last cumulative value
     * @param newStart what the new meter showed at that moment
     */
    public static double offset(double cumulative, double newStart) {
        return cumulative - newStart;
    }
}
