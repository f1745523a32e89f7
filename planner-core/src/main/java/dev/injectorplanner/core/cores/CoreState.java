package dev.injectorplanner.core.cores;

/** How urgent a core is. */
public enum CoreState {
    /** Its last day has passed: ask the supplier, the deposit may be lost. */
    PAST,
    /** Its last day is near: send it now. */
    SEND_NOW,
    /** There is time. */
    OPEN
}
