package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.file.RawFile;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.nio.file.Path;

/** Reads a file of rows: CSV or a workbook, one table a file or a sheet. */
public final class TableReader {
    private TableReader() {}

    /**
     * Reads a file and hands every row to the receiver as it goes; memory does not grow with the file, save for a
     * fingerprint of each row (37 to 75 bytes), which finds rows that are duplicates, and the texts of a workbook.
     *
     * <p>The file is first gone through as a whole: where it must be refused, it is refused before any row is handed
     * over.
     *
     * <p>What the receiver throws ends the reading and comes out as it is.
     *
     * @throws FileRefusedException if the file as a whole cannot be read
     */
    public static void read(Path file, ReadSettings settings, RowReceiver receiver) {
        try (RawFile raw = RawFile.open(file, settings)) {
            new FileIntake(file, raw, settings, receiver).run();
        }
    }

    /**
     * Reads rows of a form or another program by the rules of files.
     *
     * @throws FileRefusedException if the headings do not make a table
     */
    public static void read(GivenRows rows, ReadSettings settings, RowReceiver receiver) {
        new FileIntake(Path.of(rows.source()), rows, settings, receiver).run();
    }
}
