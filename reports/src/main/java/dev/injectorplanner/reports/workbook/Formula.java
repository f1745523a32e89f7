package dev.injectorplanner.reports.workbook;

import java.util.Locale;

/**
 * A live cell: a formula, and the value that the engine worked out for it, so that readers which do not calculate show
 * it too.
 *
 * @param text the formula without the equals sign; {@code #} stands for the number of its own row
 * @param value what it comes to
 */
public record Formula(String text, double value) {
    /** The formula for a row of the sheet, counted from 1. */
    String inRow(int row) {
        return text.replace("#", String.format(Locale.ROOT, "%d", row));
    }
}
