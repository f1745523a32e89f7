package dev.injectorplanner.reports.workbook;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.jspecify.annotations.Nullable;

/** Values into cells: real dates, real numbers, live formulas, and text that stays text. */
final class Cells {
    private static final float LINE_POINTS = 12.5f;
    private static final float AIR_POINTS = 4;

    /** Characters of usual text that fit in a unit of column width; a little fewer than do. */
    private static final double CHARACTERS_A_UNIT = 1.15;

    private static final int LONGEST = 32_000;

    private final Styles styles;

    Cells(Styles styles) {
        this.styles = styles;
    }

    void put(Row row, int at, @Nullable Object value, CellStyle style) {
        Cell cell = row.createCell(at);
        cell.setCellStyle(style);
        if (value == null) {
            return;
        }
        if (value instanceof Formula formula) {
            cell.setCellFormula(formula.inRow(row.getRowNum() + 1));
            cell.setCellValue(formula.value());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
        } else if (value instanceof BigDecimal money) {
            cell.setCellValue(money.doubleValue());
        } else if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else {
            text(cell, String.valueOf(value));
        }
    }

    /** Height of a row of this many lines of text, points. */
    static float points(int lines) {
        return AIR_POINTS + LINE_POINTS * lines;
    }

    /** Lines that a value takes in a column of a width in characters. */
    static int lines(@Nullable Object value, Format format, int width) {
        if (format != Format.WRAPPED || value == null) {
            return 1;
        }
        int used = 0;
        int lines = 1;
        for (String word : String.valueOf(value).split(" ", -1)) {
            if (used > 0 && used + 1 + word.length() > CHARACTERS_A_UNIT * width) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + word.length();
        }
        return lines;
    }

    private void text(Cell cell, String text) {
        cell.setCellValue(text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...");
        if (!text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0) {
            cell.setCellStyle(styles.quoted());
        }
    }
}
