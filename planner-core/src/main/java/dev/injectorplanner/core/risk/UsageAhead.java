package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.usage.MeterUsage;
import java.util.function.DoubleUnaryOperator;

/**
 * What a truck may run in the coming weeks: a normal spread around its usual pace, cut at 0. Its variance is that of the
 * weeks, taken as independent, and of a slow drift of the pace (season, another round) of a tenth of it.
 *
 * @param perWeek usual use a week
 * @param spreadPerWeek standard deviation of a week's use
 * @param silentWeeks weeks beyond the first since the truck's last reading: its meters of today are an estimate, and what
 *     they may be off by is added to the spread
 */
record UsageAhead(double perWeek, double spreadPerWeek, double silentWeeks) {
    /** Standard deviation of the pace over weeks, as a share of it: a planner default. */
    static final double DRIFT = 0.1;

    private static final double NODE = Math.sqrt(3);

    static UsageAhead of(MeterUsage meter) {
        return new UsageAhead(meter.perWeek(), meter.spreadPerWeek(), Math.max(0, meter.silentDays() - 7) / 7.0);
    }

    /** Of a truck whose meters were just read. */
    UsageAhead(double perWeek, double spreadPerWeek) {
        this(perWeek, spreadPerWeek, 0);
    }

    double deviation(double weeks) {
        double uncertain = weeks + silentWeeks;
        double drift = DRIFT * uncertain * perWeek;
        return Math.sqrt(uncertain * spreadPerWeek * spreadPerWeek + drift * drift);
    }

    /**
     * Mean of a function of the use over this many weeks, by the three-point rule of Gauss and Hermite: exact for polynomials
     * up to the fifth degree (Abramowitz and Stegun 1964, 25.4.46).
     */
    double mean(double weeks, DoubleUnaryOperator ofUse) {
        double middle = weeks * perWeek;
        double away = NODE * deviation(weeks);
        return (4 * ofUse.applyAsDouble(middle)
                        + ofUse.applyAsDouble(Math.max(0, middle - away))
                        + ofUse.applyAsDouble(middle + away))
                / 6;
    }
}
