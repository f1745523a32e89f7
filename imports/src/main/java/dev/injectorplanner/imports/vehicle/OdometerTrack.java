package dev.injectorplanner.imports.vehicle;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The odometer over a log, thinned: when it is full, every second point goes and the rest stand further apart. Of several
 * ECUs that send it, the first at high resolution counts, else the first.
 */
final class OdometerTrack {
    private static final int MOST_POINTS = 4_096;
    private static final long FIRST_APART = 1_000_000;
    private static final long NEAR_MICROS = 600_000_000L;
    private static final int NONE = -1;

    private final long[] micros = new long[MOST_POINTS];
    private final double[] km = new double[MOST_POINTS];
    private int points;
    private long apart = FIRST_APART;
    private int source = NONE;
    private boolean fine;
    private long lastMicros;
    private double lastKm;

    /** @return whether the value counts */
    boolean add(long at, int from, double value, boolean isFine) {
        if (source == NONE || isFine && !fine) {
            source = from;
            fine = isFine;
            points = 0;
        } else if (source != from || fine != isFine) {
            return false;
        }
        lastMicros = at;
        lastKm = value;
        if (points == 0 || at - micros[points - 1] >= apart) {
            if (points == MOST_POINTS) {
                thin();
            }
            micros[points] = at;
            km[points++] = value;
        }
        return true;
    }

    private void thin() {
        points = MOST_POINTS / 2;
        for (int i = 0; i < points; i++) {
            micros[i] = micros[2 * i];
            km[i] = km[2 * i];
        }
        apart *= 2;
    }

    /** The odometer at a moment, between two points; the first or last one where the moment is within ten minutes of it. */
    @Nullable
    Double at(long moment) {
        if (points == 0) {
            return null;
        }
        int found = Arrays.binarySearch(micros, 0, points, moment);
        if (found >= 0) {
            return km[found];
        }
        int next = -found - 1;
        if (next == 0) {
            return micros[0] - moment <= NEAR_MICROS ? Double.valueOf(km[0]) : null;
        }
        long before = micros[next - 1];
        long after = next < points ? micros[next] : lastMicros;
        double then = next < points ? km[next] : lastKm;
        if (moment >= after) {
            return moment - after <= NEAR_MICROS ? Double.valueOf(then) : null;
        }
        return km[next - 1] + (then - km[next - 1]) * ((double) (moment - before) / (after - before));
    }
}
