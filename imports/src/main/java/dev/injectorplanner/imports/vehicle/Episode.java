package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.core.fleet.FaultCode;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A run of reports of one fault that counts as one.
 *
 * @param source address of the ECU that reported it
 * @param code the fault
 * @param first its first report, UTC
 * @param last its last report, UTC
 * @param count how often the fault came in it, at least 1: the rise of its cumulative counter, or where the ECU does not count
 *     how often it turned active
 * @param reports messages that reported it
 * @param odometerKm odometer at its first report, between two readings of the log; null where there are none near it
 */
public record Episode(
        int source,
        FaultCode code,
        Instant first,
        Instant last,
        int count,
        long reports,
        @Nullable Double odometerKm) {
    /** A fault that is silent for longer has ended: the engine was off, or it went by itself (planner default). */
    public static final Duration GAP = Duration.ofMinutes(30);
}
