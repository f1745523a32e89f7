package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.fleet.FaultCode;
import java.util.Set;

/**
 * Codes that say the common rail's pressure was off: it hurts, or comes from, any of the engine's injectors. P0087 rail
 * pressure too low, P0088 too high, P0093 and P0094 fuel leak large and small, P0191 rail pressure out of range (SAE J2012
 * / ISO 15031-6); SPN 157 is the rail pressure (SAE J1939 Digital Annex), with the FMIs for above and below normal, 0, 1
 * and 15 to 18 (SAE J1939-73). Electrical faults of the sensor are left out.
 */
final class RailFaults {
    private static final Set<String> CODES = Set.of(
            "P0087",
            "P0088",
            "P0093",
            "P0094",
            "P0191",
            "SPN 157 FMI 0",
            "SPN 157 FMI 1",
            "SPN 157 FMI 15",
            "SPN 157 FMI 16",
            "SPN 157 FMI 17",
            "SPN 157 FMI 18");

    private RailFaults() {}

    static boolean is(FaultCode code) {
        return CODES.contains(code.text());
    }
}
