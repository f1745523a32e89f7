package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.units.SiteForm.DateForm;
import org.apache.poi.ss.usermodel.HorizontalAlignment;

/** How the cells of a column are written. */
public enum Format {
    TEXT("@", HorizontalAlignment.LEFT),
    WRAPPED("@", HorizontalAlignment.LEFT),
    DATE("yyyy-mm-dd", HorizontalAlignment.LEFT),
    WHOLE("#,##0", HorizontalAlignment.RIGHT),
    /** Pieces: whole ones without decimals, parts of one with them. */
    QUANTITY("General", HorizontalAlignment.RIGHT),
    ONE_DECIMAL("#,##0.0", HorizontalAlignment.RIGHT),
    TWO_DECIMALS("#,##0.00", HorizontalAlignment.RIGHT);

    private final String pattern;
    private final HorizontalAlignment alignment;

    Format(String pattern, HorizontalAlignment alignment) {
        this.pattern = pattern;
        this.alignment = alignment;
    }

    /** Whether its cells are figures, which stand at the right. */
    public boolean isFigure() {
        return alignment == HorizontalAlignment.RIGHT;
    }

    String pattern(DateForm dates) {
        return this == DATE ? dates.cellPattern() : pattern;
    }

    HorizontalAlignment alignment() {
        return alignment;
    }
}
