package dev.injectorplanner.reports.workbook;

/**
 * A column of a sheet.
 *
 * @param title its heading, with the unit
 * @param format how its cells are written
 * @param width its width, characters
 * @param total whether the line of totals sums it
 */
public record SheetColumn(String title, Format format, int width, boolean total) {
    public static SheetColumn of(String title, Format format, int width) {
        return new SheetColumn(title, format, width, false);
    }

    public static SheetColumn summed(String title, Format format, int width) {
        return new SheetColumn(title, format, width, true);
    }
}
