package dev.injectorplanner.app.intake;

import java.nio.file.Path;

/** Hears of a load's progress. */
public interface LoadListener {
    /** Says nothing. */
    LoadListener SILENT = new LoadListener() {};

    /** A file is about to be read; {@code rows} rows stand in it. */
    default void starting(Path file, long rows) {}

    /** {@code rows} rows of the file have been dealt with; what of them was good is stored for good, unless checking. */
    default void done(Path file, long rows) {}

    /** {@code rows} rows of the file have been refused so far; they are among those dealt with. */
    default void refused(Path file, long rows) {}

    /** Asked between two batches, also where rows are only tried; throws where the load is to end here. */
    default void stopIfAsked() {}

    /** The file is finished. */
    default void finished(FileReport report) {}
}
