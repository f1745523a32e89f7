package dev.injectorplanner.core.fleet;

/** A short test of the injectors in the engine, no access needed. */
public enum TestKind {
    /** Fuel correction of a cylinder against the others. */
    BALANCE,
    /** Fuel that an injector sends back instead of into the cylinder. */
    RETURN_FLOW,
    /** What a cylinder adds to the engine's work, against the others. */
    CONTRIBUTION
}
