package dev.injectorplanner.imports.lives;

import de.siegmar.fastcsv.reader.CsvRecord;
import org.jspecify.annotations.Nullable;

/** The present row. A cell that cannot be used is complained of and read as NaN, so that one pass finds them all. */
final class CsvRow {
    private final CsvTable table;
    private @Nullable CsvRecord cells;

    CsvRow(CsvTable table) {
        this.table = table;
    }

    void moveTo(CsvRecord next) {
        cells = next;
    }

    boolean has(String column) {
        return table.has(column);
    }

    String text(String column) {
        return current().getField(table.place(column)).strip();
    }

    long line() {
        return current().getStartingLineNumber();
    }

    private CsvRecord current() {
        CsvRecord now = cells;
        if (now == null) {
            throw new IllegalStateException("no row yet");
        }
        return now;
    }

    void complain(String column, String reason, String fix) {
        table.complain(table.name() + ", line " + line() + ", column " + column + ": \"" + text(column) + "\" " + reason
                + ". Fix: " + fix + ".");
    }

    /** Text that must not be empty. */
    String filled(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            complain(column, "is empty", "fill it in");
        }
        return text;
    }

    /** A plain number, or NaN after a complaint. */
    double number(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            complain(column, "is empty", "enter a number, or remove the row");
            return Double.NaN;
        }
        if (isPlain(text)) {
            try {
                double value = Double.parseDouble(text);
                if (Double.isFinite(value)) {
                    return value;
                }
            } catch (NumberFormatException e) {
                // falls through to the complaint
            }
        }
        complain(column, "is not a plain number", "write it like 12500 or 0.25, without thousands separators or units");
        return Double.NaN;
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!((c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'e' || c == 'E')) {
                return false;
            }
        }
        return true;
    }

    double notNegative(String column) {
        double value = number(column);
        if (value < 0) {
            complain(column, "is below zero", "enter zero or more");
        }
        return value;
    }

    double positive(String column) {
        double value = number(column);
        if (value <= 0) {
            complain(column, "is not above zero", "enter an age above zero, or remove the row");
        }
        return value;
    }

    /** 1 or 0. */
    double flag(String column) {
        double value = number(column);
        if (!(value == 0 || value == 1 || Double.isNaN(value))) {
            complain(column, "is neither 1 nor 0", "enter 1 for a failure, 0 for a unit still working");
        }
        return value;
    }

    /** A whole number from 1 to a thousand million. */
    double count(String column) {
        double value = number(column);
        if (!Double.isNaN(value) && !(value >= 1 && value <= 1e9 && value == Math.rint(value))) {
            complain(column, "is not a whole number of 1 or more", "enter the number of units the row represents");
        }
        return value;
    }
}
