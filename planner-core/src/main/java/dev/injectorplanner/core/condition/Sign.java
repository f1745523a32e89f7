package dev.injectorplanner.core.condition;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What can speak against a fitted injector. Signs of one cylinder count since its injector went in. What they say of a
 * defect is learned in {@code core.defect}.
 */
public enum Sign {
    /** Faults of the cylinder, those of its circuit apart, on one day of the last 60. */
    ONE_FAULT("a fault on one day"),
    /** Faults of the cylinder on two days or more of the last 60. */
    FAULTS("faults on several days"),
    /** Faults of the injector's circuit within the last 60 days, on however many of them. */
    CIRCUIT("circuit faults"),
    /** The latest balance or return-flow test of the last 180 days is over its limit. */
    TEST("test over its limit"),
    /**
     * A fault of the engine's fuel within the last 60 days: rail or supply pressure off, a leak, water in the fuel. It speaks
     * against every injector of the engine.
     */
    RAIL("fuel pressure, leak or water fault of the engine");

    private final String words;

    Sign(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Signs in words, or "no warning sign". */
    public static String words(Set<Sign> signs) {
        return signs.isEmpty()
                ? "no warning sign"
                : EnumSet.copyOf(signs).stream().map(Sign::words).collect(Collectors.joining(", "));
    }
}
