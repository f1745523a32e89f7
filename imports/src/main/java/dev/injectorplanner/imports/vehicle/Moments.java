package dev.injectorplanner.imports.vehicle;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Moments of a log as instants. */
public final class Moments {
    private Moments() {}

    /** @param micros microseconds since 1970 UTC */
    public static Instant of(long micros) {
        return Instant.EPOCH.plus(micros, ChronoUnit.MICROS);
    }
}
