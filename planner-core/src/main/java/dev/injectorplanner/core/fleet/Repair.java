package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A repair that was done on a truck, or a fault that was looked for and not found.
 *
 * @param truck the truck
 * @param doneOn day it was finished
 * @param odometerKm odometer then, km; null where nobody read it
 * @param what what was done; {@value #NO_FAULT_FOUND} where a diagnosis found nothing, with the codes that it looked for
 * @param hours labour it took; null where nobody noted it
 * @param remark anything else, or empty
 * @param by who did it or stands for it
 */
public record Repair(
        String truck,
        LocalDate doneOn,
        @Nullable Double odometerKm,
        String what,
        @Nullable Double hours,
        String remark,
        String by) {
    /** What is written where a diagnosis found nothing. */
    public static final String NO_FAULT_FOUND = "no fault found";

    private static final String LOOKED_FOR = NO_FAULT_FOUND + ", looked for codes ";

    public Repair {
        truck = Require.name("truck", truck);
        what = Require.text("what", what);
        if (what.isEmpty()) {
            throw new InvalidValueException(
                    "what", "", "is empty", "say what was repaired, or \"" + NO_FAULT_FOUND + "\"");
        }
        by = Require.name("by", by);
        if (odometerKm != null) {
            Require.within("odometer_km", odometerKm, 0, 1e7);
        }
        if (hours != null) {
            Require.within("hours", hours, 0, 1_000);
        }
        remark = Require.text("remark", remark);
    }

    /** The {@code what} of a diagnosis that looked for these fault codes and found nothing. */
    public static String foundNothing(Collection<String> codes) {
        return codes.isEmpty() ? NO_FAULT_FOUND : LOOKED_FOR + String.join(", ", codes);
    }

    /** Fault codes that a diagnosis looked for in vain; empty where it names none, or found something. */
    public List<String> lookedFor() {
        return namesCodes()
                ? Arrays.stream(what.substring(LOOKED_FOR.length()).split(","))
                        .map(String::strip)
                        .filter(code -> !code.isEmpty())
                        .toList()
                : List.of();
    }

    private boolean namesCodes() {
        return what.regionMatches(true, 0, LOOKED_FOR, 0, LOOKED_FOR.length());
    }

    /** Whether its diagnosis looked for a fault code. */
    public boolean lookedFor(FaultCode code) {
        return lookedFor().stream().anyMatch(code.text()::equalsIgnoreCase);
    }

    /** Whether it says that a diagnosis found nothing. */
    public boolean foundNothing() {
        return what.equalsIgnoreCase(NO_FAULT_FOUND) || namesCodes();
    }
}
