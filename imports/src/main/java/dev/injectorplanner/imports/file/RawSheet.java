package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A sheet of a workbook, or a text file, that can be gone through more than once. */
public interface RawSheet {
    /** Name of the sheet, or null for a text file. */
    @Nullable
    String name();

    /** Whether the workbook hides it. */
    boolean hidden();

    /** What stands between the cells of a text file; a comma for a sheet. */
    char delimiter();

    /** Whether a row that has fewer cells than headings has lost some; a sheet just has none there. */
    boolean countsCells();

    /**
     * Goes through all rows.
     *
     * @throws FileRefusedException if the file is damaged
     */
    void read(RawRows rows);

    /** What to know about the sheet, or the text file, once it has been gone through. */
    List<String> remarks();
}
