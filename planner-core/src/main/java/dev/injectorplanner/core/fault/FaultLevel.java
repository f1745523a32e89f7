package dev.injectorplanner.core.fault;

/** How far a measured value is off, where the code says that it is. */
public enum FaultLevel {
    /** The code says nothing of the value: an electrical fault, a fault of the sensor, an unknown cause. */
    NOT_SAID,
    LEAST,
    MODERATE,
    MOST;

    public boolean isSaid() {
        return this != NOT_SAID;
    }
}
