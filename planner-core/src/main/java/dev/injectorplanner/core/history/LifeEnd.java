package dev.injectorplanner.core.history;

/** How a life under observation ended. */
public enum LifeEnd {
    /** Failed in service. */
    FAILED,
    /** Taken out worn: its defect was found before it failed. */
    WORN,
    /** Taken out without a defect, or nobody noted one. */
    TAKEN_OUT,
    /** Still in, or gone with its truck. */
    IN_SERVICE
}
