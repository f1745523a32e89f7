package dev.injectorplanner.core.history;

/** How a life under observation ended. */
public enum LifeEnd {
    /** Failed in service. */
    FAILED,
    /** Taken out worn: its defect was found before it failed. */
    WORN,
    /** Taken out and found without a defect. */
    HEALTHY,
    /** Taken out, and nobody noted how it was. */
    TAKEN_OUT,
    /** Still in, or gone with its truck. */
    IN_SERVICE
}
