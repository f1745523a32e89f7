package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * How files are loaded.
 *
 * @param as the table that every file holds, or null where names and headings tell
 * @param dates how dates such as 03/04/2026 are read
 * @param mode what is done with the rows
 * @param writesRefused whether refused rows are written beside their file
 */
public record LoadSettings(@Nullable Table<?> as, DateOrder dates, Mode mode, boolean writesRefused) {
    /** What is done with the rows. */
    public enum Mode {
        /** Good rows are stored, batch by batch; refused ones are written beside the file. */
        GOOD_ROWS,
        /** A file is stored when every row of it is good, else not at all. */
        ALL_OR_NOTHING,
        /** Nothing is stored. */
        CHECK
    }

    /** Refused rows are written beside their file unless nothing is to be changed. */
    public LoadSettings(@Nullable Table<?> as, DateOrder dates, Mode mode) {
        this(as, dates, mode, mode != Mode.CHECK);
    }

    public static LoadSettings of(Mode mode) {
        return new LoadSettings(null, DateOrder.UNSTATED, mode);
    }

    /** The same, with refused rows written beside their file even where nothing is stored. */
    public LoadSettings withRefusedFiles() {
        return new LoadSettings(as, dates, mode, true);
    }
}
