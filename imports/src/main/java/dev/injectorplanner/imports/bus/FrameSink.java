package dev.injectorplanner.imports.bus;

/** Takes the frames of a log in the order in which they stand there. */
@FunctionalInterface
public interface FrameSink {
    /**
     * Takes one data frame.
     *
     * @param micros microseconds since 1970 UTC, or since the log's own start where {@link LogTally#clock()} says so
     * @param id identifier without flags
     * @param extended whether it has 29 bits, else 11
     * @param data its bytes; the array is used again for the next frame
     * @param length bytes that count, 0 to 64
     */
    void frame(long micros, int id, boolean extended, byte[] data, int length);
}
