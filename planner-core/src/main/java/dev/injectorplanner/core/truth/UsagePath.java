package dev.injectorplanner.core.truth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** True km and engine hours of a truck, week by week since it came into service: season, chance, and parked spells. */
public final class UsagePath {
    private static final double SEASON = 0.12;
    private static final int QUIETEST_DAY = 15;
    private static final double WEEK_NOISE = 0.12;
    private static final double PARKED_A_WEEK = 0.008;
    private static final int LONGEST_PARKED_WEEKS = 6;

    private final LocalDate start;
    private final double[] km;
    private final double kmPerHour;

    /**
     * @param usualKmPerWeek what trucks of its kind usually run, km a week, above 0
     * @param usualKmPerHour their mean speed over engine hours, idling counted, above 0
     * @param start its first day in service
     * @param until last day that is asked for
     */
    public UsagePath(Draws draws, double usualKmPerWeek, double usualKmPerHour, LocalDate start, LocalDate until) {
        this.start = start;
        int weeks = (int) (ChronoUnit.DAYS.between(start, until) / 7) + 2;
        km = new double[weeks + 1];
        kmPerHour = usualKmPerHour * draws.between(0.92, 1.08);
        double usual = usualKmPerWeek * StrictMath.exp(draws.normal(0, 0.18));
        km[0] = draws.between(15, 400);
        int parked = 0;
        for (int week = 0; week < weeks; week++) {
            parked = parked > 0 ? parked - 1 : draws.chance(PARKED_A_WEEK) ? draws.whole(1, LONGEST_PARKED_WEEKS) : 0;
            double noise = Math.max(0.3, draws.normal(1, WEEK_NOISE));
            double driven = parked > 0 ? 0 : usual * season(start.plusWeeks(week)) * noise;
            km[week + 1] = km[week] + driven;
        }
    }

    private static double season(LocalDate day) {
        double turn = 2 * StrictMath.PI * (day.getDayOfYear() - QUIETEST_DAY) / 365.25;
        return 1 - SEASON * StrictMath.cos(turn);
    }

    /** True km of the truck at noon of a day in service. */
    public double kmOn(LocalDate day) {
        double weeks = (ChronoUnit.DAYS.between(start, day) + 0.5) / 7;
        int week = (int) Math.max(0, Math.min(km.length - 2, Math.floor(weeks)));
        return km[week] + (weeks - week) * (km[week + 1] - km[week]);
    }

    /** Engine hours at true km. */
    public double hoursAt(double trueKm) {
        return trueKm / kmPerHour;
    }

    /** The first day whose noon lies at or beyond true km; far ahead where that is beyond the path. */
    public LocalDate dayAt(double trueKm) {
        if (trueKm > km[km.length - 1]) {
            return LocalDate.MAX;
        }
        int low = 0;
        int high = km.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (km[middle] >= trueKm) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        if (low == 0) {
            return start;
        }
        double share = (trueKm - km[low - 1]) / (km[low] - km[low - 1]);
        return start.plusDays((long) Math.max(0, Math.ceil(7 * (low - 1 + share) - 0.5)));
    }
}
