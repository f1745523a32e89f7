package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A stored fault of an engine: one report of a code, or an episode, a run of repeated reports that counts as one. A report
 * without its counter is an episode of no length that came once.
 *
 * @param truck the truck
 * @param seenAt the moment of the report, or the first of the episode, UTC
 * @param code the fault
 * @param cylinder the cylinder it speaks of: from the code where the standard says so, else as entered, else null
 * @param count occurrences, at least 1: of a report as its counter says, cumulative; of an episode the counter's rise in it
 * @param odometerKm odometer at {@code seenAt}, km, or null
 * @param lastSeenAt the last moment of an episode, UTC, not before {@code seenAt}; null for one report
 */
public record Fault(
        String truck,
        Instant seenAt,
        FaultCode code,
        @Nullable Integer cylinder,
        int count,
        @Nullable Double odometerKm,
        @Nullable Instant lastSeenAt) {
    public Fault {
        truck = Require.name("truck", truck);
        Integer fromCode = code.cylinder();
        if (cylinder != null) {
            Require.within("cylinder", cylinder, 1, EngineFamily.MOST_CYLINDERS);
        }
        if (fromCode != null && cylinder != null && !fromCode.equals(cylinder)) {
            throw new InvalidValueException(
                    "cylinder",
                    cylinder,
                    "the code " + code + " is for cylinder " + fromCode,
                    "leave the cylinder empty, or correct the code");
        }
        cylinder = fromCode != null ? fromCode : cylinder;
        Require.within("count", count, 1, 1_000_000);
        Require.optionalNotNegative("odometer", odometerKm);
        if (lastSeenAt != null && lastSeenAt.isBefore(seenAt)) {
            throw new InvalidValueException(
                    "last_seen_at", lastSeenAt, "is before seen_at, " + seenAt, "correct one of them");
        }
    }

    /** One report of a code. */
    public Fault(
            String truck,
            Instant seenAt,
            FaultCode code,
            @Nullable Integer cylinder,
            int count,
            @Nullable Double odometerKm) {
        this(truck, seenAt, code, cylinder, count, odometerKm, null);
    }

    /** One report of a code whose counter nobody noted. */
    public static Fault uncounted(
            String truck, Instant seenAt, FaultCode code, @Nullable Integer cylinder, @Nullable Double odometerKm) {
        return new Fault(truck, seenAt, code, cylinder, 1, odometerKm, seenAt);
    }

    /** Whether it is one report that says nothing of its code's counter. */
    public boolean isUncounted() {
        return count == 1 && seenAt.equals(lastSeenAt);
    }

    /** Whether it is an episode, whose count is a rise and not a counter's reading. */
    public boolean isEpisode() {
        return lastSeenAt != null;
    }

    /** The last moment at which it was seen. */
    public Instant until() {
        Instant last = lastSeenAt;
        return last == null ? seenAt : last;
    }
}
