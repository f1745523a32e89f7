package dev.injectorplanner.imports.vehicle;

import dev.injectorplanner.imports.j1939.FaultMessage;
import dev.injectorplanner.imports.obd.ObdReport;

/** Hears of every message about faults while a log is read. */
public interface LogListener {
    /** Hears nothing. */
    LogListener SILENT = new LogListener() {};

    /** A fault message of SAE J1939. */
    default void faults(FaultMessage message) {}

    /** An answer of OBD. */
    default void answers(ObdReport report) {}
}
