package dev.injectorplanner.core.due;

/** What made something due. */
public enum DueKind {
    /** A fuel leak or fuel pressure fault: the truck is brought in now. */
    SAFETY,
    AGE_MONTHS,
    DISTANCE_KM,
    ENGINE_HOURS,
    FAULTS,
    BALANCE,
    RETURN_FLOW,
    RISK,
    WARRANTY,
    INTERVAL,
    INSPECTION,
    /** No rule asks for it: leaving it would cost more. */
    COST
}
