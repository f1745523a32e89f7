package dev.injectorplanner.core.condition;

import java.util.EnumSet;
import java.util.Set;

/**
 * What can speak against a fitted injector. Signs of one cylinder count since its injector went in. The ratios hold until
 * the fleet's own records tell; they are planner defaults without a source.
 */
public enum Sign {
    /** Faults of the cylinder on one day of the last 60. */
    ONE_FAULT("a fault on one day", 2),
    /** Faults of the cylinder on two days or more of the last 60. */
    FAULTS("faults on several days", 6),
    /** The latest balance or return-flow test of the last 180 days is over its limit. */
    TEST("test over its limit", 8),
    /** A rail pressure fault of the engine within the last 60 days; it speaks against every injector of the engine. */
    RAIL("rail pressure fault of the engine", 1.5);

    private final String words;
    private final double usual;

    Sign(String words, double usual) {
        this.words = words;
        this.usual = usual;
    }

    public String words() {
        return words;
    }

    /** Hazard ratio against an injector without this sign, until the fleet's own data is enough. */
    public double defaultRatio() {
        return usual;
    }

    /**
     * The signs that count: faults and tests tell of the same defect, so that of them only the strongest does. A rail
     * pressure fault counts beside it.
     */
    static Set<Sign> counting(Set<Sign> signs) {
        Set<Sign> counting = EnumSet.noneOf(Sign.class);
        if (signs.contains(RAIL)) {
            counting.add(RAIL);
        }
        if (signs.contains(TEST)) {
            counting.add(TEST);
        } else if (signs.contains(FAULTS)) {
            counting.add(FAULTS);
        } else if (signs.contains(ONE_FAULT)) {
            counting.add(ONE_FAULT);
        }
        return counting;
    }
}
