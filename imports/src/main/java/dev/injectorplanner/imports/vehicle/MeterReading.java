package dev.injectorplanner.imports.vehicle;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What a truck's meters showed.
 *
 * @param takenAt when, UTC
 * @param odometerKm odometer, or null
 * @param engineHours engine hours, or null
 */
public record MeterReading(
        Instant takenAt,
        @Nullable Double odometerKm,
        @Nullable Double engineHours) {}
