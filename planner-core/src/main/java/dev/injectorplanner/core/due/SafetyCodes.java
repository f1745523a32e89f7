package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.FaultCode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Faults that make a truck unsafe to leave running: fuel leaks, and fuel pressure far off. Sources, from memory: P0087, P0088,
 * P008A, P008B, P0093, P0094 in SAE J2012 / ISO 15031-6; SPN 94 fuel delivery pressure, 157 rail pressure, 1239 and 1240
 * fuel leakage in SAE J1939-71 and its Digital Annex; FMI 0 and 1 most severe, 16 and 18 moderately severe, above and below
 * normal, in SAE J1939-73. The least severe levels, FMI 15 and 17, and faults of the sensor itself ask for no such haste.
 * Bringing these in at once is common practice; the engine maker's manual takes precedence.
 */
final class SafetyCodes {
    private static final Map<String, String> WORDS = new TreeMap<>();

    static {
        WORDS.put("P0087", "rail pressure too low");
        WORDS.put("P0088", "rail pressure too high");
        WORDS.put("P008A", "fuel delivery pressure too low");
        WORDS.put("P008B", "fuel delivery pressure too high");
        WORDS.put("P0093", "large fuel leak");
        WORDS.put("P0094", "small fuel leak");
        levels(94, "fuel delivery pressure");
        levels(157, "rail pressure");
        for (int fmi = 0; fmi <= 31; fmi++) {
            WORDS.put("SPN 1239 FMI " + fmi, "fuel leak");
            WORDS.put("SPN 1240 FMI " + fmi, "fuel leak");
        }
    }

    private SafetyCodes() {}

    private static void levels(int spn, String what) {
        WORDS.put("SPN " + spn + " FMI 0", what + " too high, most severe");
        WORDS.put("SPN " + spn + " FMI 1", what + " too low, most severe");
        WORDS.put("SPN " + spn + " FMI 16", what + " too high, moderately severe");
        WORDS.put("SPN " + spn + " FMI 18", what + " too low, moderately severe");
    }

    /** A safety code in words. */
    static Optional<String> find(FaultCode code) {
        return Optional.ofNullable(WORDS.get(code.text()));
    }

    /** The same of a code's text; the text itself where it may wait. */
    static String words(String code) {
        return WORDS.getOrDefault(code, code);
    }
}
