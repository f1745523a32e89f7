package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.table.Table;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How files are loaded.
 *
 * @param as the table that every file holds, or null where names and headings tell
 * @param dates how dates such as 03/04/2026 are read
 * @param mode what is done with the rows
 * @param writesRefused whether refused rows are written beside their file
 * @param numbers which sign stands before decimals, where no match says
 * @param matches how files of some sources are read, beside those that are kept; kept once a file was loaded by them
 */
public record LoadSettings(
        @Nullable Table<?> as,
        DateOrder dates,
        Mode mode,
        boolean writesRefused,
        NumberForm numbers,
        List<FileMatch> matches) {
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
        this(as, dates, mode, mode != Mode.CHECK, NumberForm.UNSTATED, List.of());
    }

    public static LoadSettings of(Mode mode) {
        return new LoadSettings(null, DateOrder.UNSTATED, mode);
    }

    /** The same, with refused rows written beside their file even where nothing is stored. */
    public LoadSettings withRefusedFiles() {
        return new LoadSettings(as, dates, mode, true, numbers, matches);
    }

    public LoadSettings withNumbers(NumberForm form) {
        return new LoadSettings(as, dates, mode, writesRefused, form, matches);
    }

    public LoadSettings withMatches(List<FileMatch> given) {
        return new LoadSettings(as, dates, mode, writesRefused, numbers, List.copyOf(given));
    }
}
