package dev.injectorplanner.imports.bus;

/** What the times of a log count from. */
public enum LogClock {
    /** 1970 UTC. */
    UTC,
    /** Day and time without an offset: some clock on the wall. */
    LOCAL,
    /** The start of the recording, or midnight of an unknown day. */
    START_OF_LOG
}
