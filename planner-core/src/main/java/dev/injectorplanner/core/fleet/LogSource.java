package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Which truck a vehicle log, or one ECU in it, belongs to, and how that ECU lays out its fault codes.
 *
 * @param log name of the log file; {@code *} stands for any characters, case does not count
 * @param sourceAddress the ECU's address on the bus, 0 to 253; null for all of the log
 * @param truck the truck; null where the file name or the VIN in the log tells
 * @param spnLayout layout of its SPNs, 1 to 4 (SAE J1939-73 5.7.1); null for 4, today's
 */
public record LogSource(
        String log,
        @Nullable Integer sourceAddress,
        @Nullable String truck,
        @Nullable Integer spnLayout) {
    private static final int MOST_ADDRESS = 253;

    public LogSource {
        log = Require.text("log", log);
        if (log.isEmpty() || log.length() > 120) {
            throw new InvalidValueException(
                    "log", log, "must have 1 to 120 characters", "enter the log's file name, or * for any log");
        }
        if (sourceAddress != null) {
            Require.within("source_address", sourceAddress, 0, MOST_ADDRESS);
        }
        if (spnLayout != null) {
            Require.within("spn_layout", spnLayout, 1, 4);
        }
        truck = truck == null ? null : Require.name("truck", truck);
        if (truck == null && spnLayout == null) {
            throw new InvalidValueException(
                    "truck", "", "is empty, and so is spn_layout", "enter at least one of them");
        }
    }

    /** Whether it speaks of a log of this file name. */
    public boolean isOf(String fileName) {
        return matches(log.toLowerCase(Locale.ROOT), fileName.toLowerCase(Locale.ROOT));
    }

    /** Whether a name fits a pattern; '*' stands for any characters. Wildcards without going back further than the last one: linear in practice, never exponential. */
    public static boolean matches(String pattern, String name) {
        int at = 0;
        int in = 0;
        int star = -1;
        int resume = 0;
        while (in < name.length()) {
            if (at < pattern.length() && pattern.charAt(at) == '*') {
                star = at++;
                resume = in;
            } else if (at < pattern.length() && pattern.charAt(at) == name.charAt(in)) {
                at++;
                in++;
            } else if (star >= 0) {
                at = star + 1;
                in = ++resume;
            } else {
                return false;
            }
        }
        while (at < pattern.length() && pattern.charAt(at) == '*') {
            at++;
        }
        return at == pattern.length();
    }
}
