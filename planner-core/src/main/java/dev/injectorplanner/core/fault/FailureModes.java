package dev.injectorplanner.core.fault;

import java.util.List;

/**
 * The failure mode identifiers of SAE J1939-73, 0 to 31, in words. Numbers and meaning as in the open extract of the SAE
 * J1939 Digital Annex of 2020; the wording is ours.
 */
public final class FailureModes {
    /** The highest identifier: five bits. */
    public static final int MOST = 31;

    private static final List<String> WORDS = List.of(
            "too high, most severe",
            "too low, most severe",
            "erratic, intermittent or incorrect",
            "voltage above normal or shorted high",
            "voltage below normal or shorted low",
            "current below normal or open circuit",
            "current above normal or shorted to ground",
            "mechanical system not responding or out of adjustment",
            "abnormal frequency, pulse width or period",
            "abnormal update rate",
            "abnormal rate of change",
            "root cause not known",
            "bad device or component",
            "out of calibration",
            "special instructions of the maker",
            "too high, least severe",
            "too high, moderately severe",
            "too low, least severe",
            "too low, moderately severe",
            "received network data in error",
            "drifted high",
            "drifted low");

    private FailureModes() {}

    /**
     * An identifier in words.
     *
     * @param fmi 0 to 31
     */
    public static String words(int fmi) {
        if (fmi == MOST) {
            return "condition exists";
        }
        return fmi < WORDS.size() ? WORDS.get(fmi) : "reserved failure mode " + fmi;
    }

    /** How far the value is off: 0 and 1 most, 16 and 18 moderately, 15 and 17 least. */
    static FaultLevel level(int fmi) {
        return switch (fmi) {
            case 0, 1 -> FaultLevel.MOST;
            case 16, 18 -> FaultLevel.MODERATE;
            case 15, 17 -> FaultLevel.LEAST;
            default -> FaultLevel.NOT_SAID;
        };
    }
}
