package dev.injectorplanner.imports.j1939;

/** Takes what was decoded, in the order of the log. Moments are as the log counts them, microseconds. */
public interface BusMessages {
    /** A fault message, with faults or without. */
    void faults(FaultMessage message);

    /**
     * The vehicle's distance.
     *
     * @param source address of the ECU
     * @param km total distance, 0 or more
     * @param fine whether it came at high resolution
     */
    default void distance(long micros, int source, double km, boolean fine) {}

    /**
     * The engine's hours.
     *
     * @param source address of the ECU
     * @param hours total, 0 or more
     */
    default void engineHours(long micros, int source, double hours) {}

    /** A vehicle identification number as it was sent, without blanks at its ends. */
    default void vin(long micros, int source, String vin) {}
}
