package dev.injectorplanner.core.fleet;

/** What a part in a job is counted by. */
public enum Per {
    CYLINDER,
    BANK,
    VISIT,
    STEP,
    TASK
}
