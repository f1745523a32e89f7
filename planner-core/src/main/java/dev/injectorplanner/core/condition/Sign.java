package dev.injectorplanner.core.condition;

/**
 * What can speak against a fitted injector. Signs of one cylinder count since its injector went in. The multipliers hold
 * until the fleet's own records tell; they are planner defaults without a source.
 */
public enum Sign {
    /** Faults of the cylinder on one day of the last 60. */
    ONE_FAULT("one day with a fault", 2),
    /** Faults of the cylinder on two days or more of the last 60. */
    FAULTS("faults on several days", 6),
    /** The latest balance test of the last 180 days is over its limit. */
    BALANCE("balance over limit", 4),
    /** The latest return-flow test of the last 180 days is over its limit. */
    RETURN_FLOW("return flow over limit", 4),
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

    /** Hazard ratio against an injector without this sign, until the fleet's records tell. */
    public double defaultRatio() {
        return usual;
    }
}
