package dev.injectorplanner.core.condition;

import java.util.List;

/** Tracks for tests: faults by week, nothing else. */
public final class DrawnTrack {
    private DrawnTrack() {}

    public static SignTrack of(byte[] faultDays) {
        return new SignTrack(faultDays, new boolean[faultDays.length], new boolean[faultDays.length], List.of());
    }
}
