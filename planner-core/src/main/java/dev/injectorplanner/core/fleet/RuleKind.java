package dev.injectorplanner.core.fleet;

/** What a rule looks at. */
public enum RuleKind {
    /** Months since fitting. */
    AGE_MONTHS,
    /** Km since fitting. */
    DISTANCE_KM,
    /** Engine hours since fitting. */
    ENGINE_HOURS,
    /** Faults of the cylinder within a window of days. */
    FAULTS,
    /** Result of the balance test, either sign. */
    BALANCE,
    /** Result of the return-flow test. */
    RETURN_FLOW,
    /** Chance of failing within the next 12 weeks, percent. */
    RISK,
    /** Days before a warranty ends in which to test. */
    WARRANTY,
    /** Days from the first sighting of a fuel leak or a fault of the fuel pressure to the bay. */
    SAFETY
}
