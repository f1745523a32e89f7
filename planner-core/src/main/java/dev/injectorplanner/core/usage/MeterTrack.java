package dev.injectorplanner.core.usage;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A truck's meter through time as one rising line: readings that are good, with the segments of replaced meters joined.
 * Days are days since 1970-01-01 UTC, with fractions. The gap between the last reading of an old meter and the first of
 * a new one is bridged at the pace of the old meter.
 */
public final class MeterTrack {
    /** Share of a meter by which a noted value may be off whatever the truck runs. */
    private static final double LEAST_SLACK = 0.002;

    private final double[] days;
    private final double[] raw;
    private final double[] cumulative;
    private final int[] segments;
    private final List<MeterFlag> flags;

    MeterTrack(double[] days, double[] raw, double[] cumulative, int[] segments, List<MeterFlag> flags) {
        this.days = days;
        this.raw = raw;
        this.cumulative = cumulative;
        this.segments = segments;
        this.flags = List.copyOf(flags);
    }

    /** Good readings. */
    public int size() {
        return days.length;
    }

    /** Readings left out, oldest first. */
    public List<MeterFlag> flags() {
        return flags;
    }

    /** The first whole day on which readings tell the meter from morning to night; null without readings. */
    public @Nullable LocalDate firstDay() {
        return size() == 0 ? null : LocalDate.ofEpochDay((long) Math.floor(days[0]) + 1);
    }

    /** Day of the last good reading; null without readings. */
    public @Nullable LocalDate lastDay() {
        return size() == 0 ? null : LocalDate.ofEpochDay((long) Math.floor(days[size() - 1]));
    }

    /** What the truck had run when its meters stood at a cumulative value: the first meter counts from 0. */
    double total(double cumulativeValue) {
        return cumulativeValue - (cumulative[0] - raw[0]);
    }

    double day(int i) {
        return days[i];
    }

    double cumulative(int i) {
        return cumulative[i];
    }

    int segment(int i) {
        return segments[i];
    }

    /**
     * The cumulative meter on a day: between readings by a straight line, after the last at the given pace.
     *
     * @param perDay pace after the last reading
     * @return null before the first reading, and without readings
     */
    @Nullable
    Double at(double day, double perDay) {
        int last = size() - 1;
        if (last < 0 || day < days[0]) {
            return null;
        }
        if (day >= days[last]) {
            return cumulative[last] + perDay * (day - days[last]);
        }
        int found = Arrays.binarySearch(days, day);
        if (found >= 0) {
            return cumulative[found];
        }
        int after = -found - 1;
        double share = (day - days[after - 1]) / (days[after] - days[after - 1]);
        return cumulative[after - 1] + share * (cumulative[after] - cumulative[after - 1]);
    }

    /**
     * Whether a cumulative value is far below the last reading before a day, which no meter of the track can have shown then.
     *
     * @param slack by which it may be off
     */
    boolean isBelow(double day, double value, double slack) {
        if (size() == 0 || day < days[0]) {
            return false;
        }
        int found = Arrays.binarySearch(days, day);
        int before = found >= 0 ? found : -found - 2;
        return value < cumulative[before] - slack - LEAST_SLACK * cumulative[before];
    }

    /** The cumulative meter on a day before the first reading, back from it at a pace, not below a meter at 0; null without readings. */
    @Nullable
    Double before(double day, double perDay) {
        return size() == 0
                ? null
                : Double.valueOf(Math.max(cumulative[0] - raw[0], cumulative[0] - perDay * (days[0] - day)));
    }

    /**
     * What a value read off the meter on a day stands for on the cumulative line: the meter in the truck that day tells.
     * Between the last reading of one meter and the first of the next, a value at or above the old meter's last is the
     * old meter's.
     *
     * @return null without readings
     */
    @Nullable
    Double cumulativeOf(double value, double day) {
        if (size() == 0) {
            return null;
        }
        int before = 0;
        while (before + 1 < size() && days[before + 1] <= day) {
            before++;
        }
        int at = before;
        boolean between = before + 1 < size() && segments[before + 1] != segments[before];
        if (between && day > days[before] && value < raw[before]) {
            at = before + 1;
        }
        return value + cumulative[at] - raw[at];
    }
}
