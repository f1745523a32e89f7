package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A stored fault of an engine.
 *
 * @param truck the truck
 * @param seenAt the moment, UTC
 * @param code the fault
 * @param cylinder the cylinder it speaks of: from the code where the standard says so, else as entered, else null
 * @param count occurrences, at least 1
 * @param odometerKm odometer then, km, or null
 */
public record Fault(
        String truck,
        Instant seenAt,
        FaultCode code,
        @Nullable Integer cylinder,
        int count,
        @Nullable Double odometerKm) {
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
    }
}
