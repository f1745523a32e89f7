package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.fleet.Reading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Judges a truck's readings one after the other and joins the good ones. */
final class MeterTrackBuilder {
    private static final double SECONDS_A_DAY = 86_400;

    private final Meter meter;
    private final List<Reading> readings;
    private final double[] days;
    private final double[] raw;
    private final double[] cumulative;
    private final int[] segments;
    private final Reading[] sources;
    private final List<MeterFlag> flags = new ArrayList<>();
    private int kept;
    private int segmentStart;

    /** @param readings of one truck, oldest first; those after {@code until} are left alone */
    MeterTrackBuilder(Meter meter, List<Reading> readings, Instant until) {
        this.meter = meter;
        this.readings = readings.stream()
                .filter(reading ->
                        meter.of(reading) != null && reading.takenAt().isBefore(until))
                .toList();
        int n = this.readings.size();
        days = new double[n];
        raw = new double[n];
        cumulative = new double[n];
        segments = new int[n];
        sources = new Reading[n];
    }

    MeterTrack build() {
        for (int i = 0; i < readings.size(); i++) {
            take(readings.get(i), i + 1 < readings.size() ? readings.get(i + 1) : null);
        }
        flags.sort(Comparator.comparing(MeterFlag::takenAt));
        return new MeterTrack(
                Arrays.copyOf(days, kept),
                Arrays.copyOf(raw, kept),
                Arrays.copyOf(cumulative, kept),
                Arrays.copyOf(segments, kept),
                flags);
    }

    private void take(Reading reading, @Nullable Reading next) {
        if (kept == 0) {
            keep(reading, value(reading), 0);
            return;
        }
        MeterVerdict verdict = judge(kept - 1, reading);
        if (verdict == MeterVerdict.ROLL_BACK && lastWasPeak(reading, next)) {
            kept--;
            flag(sources[kept], MeterVerdict.IMPLAUSIBLE);
            verdict = judge(kept - 1, reading);
        }
        if (!verdict.usable()) {
            flag(reading, verdict);
            return;
        }
        double value = value(reading);
        double from = cumulative[kept - 1];
        int segment = segments[kept - 1];
        switch (verdict) {
            case REPLACED -> {
                double bridged = from + pace() * (dayOf(reading) - days[kept - 1]);
                int start = kept;
                keep(reading, value + MeterRules.offset(bridged, value), segment + 1);
                segmentStart = start;
            }
            case ROLL_OVER -> keep(reading, from + value - raw[kept - 1] + MeterRules.ROLL_OVER_KM, segment);
            default -> keep(reading, from + value - raw[kept - 1], segment);
        }
    }

    /** Whether the last reading kept stands alone above the one before it and the two after it: two against one. */
    private boolean lastWasPeak(Reading reading, @Nullable Reading next) {
        if (kept < 2 || kept - 1 <= segmentStart || next == null || next.meterReplaced()) {
            return false;
        }
        MeterVerdict later = meter.judge(value(reading), value(next), dayOf(next) - dayOf(reading), false);
        return judge(kept - 2, reading).usable()
                && later.usable()
                && later != MeterVerdict.ROLL_OVER
                && value(next) < raw[kept - 1];
    }

    private MeterVerdict judge(int keptAt, Reading reading) {
        return meter.judge(raw[keptAt], value(reading), dayOf(reading) - days[keptAt], reading.meterReplaced());
    }

    /** Mean use a day of the segment so far. */
    private double pace() {
        double time = days[kept - 1] - days[segmentStart];
        return time > 0 ? (cumulative[kept - 1] - cumulative[segmentStart]) / time : 0;
    }

    private void keep(Reading reading, double total, int segment) {
        sources[kept] = reading;
        days[kept] = dayOf(reading);
        raw[kept] = value(reading);
        cumulative[kept] = total;
        segments[kept] = segment;
        kept++;
    }

    private void flag(Reading reading, MeterVerdict verdict) {
        flags.add(new MeterFlag(reading.truck(), reading.takenAt(), meter, value(reading), verdict));
    }

    private double value(Reading reading) {
        Double value = meter.of(reading);
        if (value == null) {
            throw new IllegalStateException("no " + meter.words() + " in " + reading);
        }
        return value;
    }

    private static double dayOf(Reading reading) {
        return reading.takenAt().getEpochSecond() / SECONDS_A_DAY;
    }
}
