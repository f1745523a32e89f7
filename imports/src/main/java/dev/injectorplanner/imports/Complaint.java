package dev.injectorplanner.imports;

import org.jspecify.annotations.Nullable;

/**
 * What is wrong with one row, where it is, and how to fix it.
 *
 * @param file name of the file
 * @param sheet name of the sheet, or null for a text file
 * @param line line in the file or row in the sheet, as a person counts, from 1
 * @param cell the cell of a sheet, such as F42, or null
 * @param column the column's name, or empty where the whole row is meant
 * @param value what stands there, shortened where it is long
 * @param reason why it is refused, without a full stop
 * @param fix what to do about it, without a full stop
 */
public record Complaint(
        String file,
        @Nullable String sheet,
        long line,
        @Nullable String cell,
        String column,
        String value,
        String reason,
        String fix) {
    private static final int LONGEST_VALUE = 60;

    public Complaint {
        value = value.length() <= LONGEST_VALUE ? value : value.substring(0, LONGEST_VALUE - 3) + "...";
    }

    /** A complaint about a row of a text file, or about a row of a sheet as a whole. */
    public Complaint(
            String file, @Nullable String sheet, long line, String column, String value, String reason, String fix) {
        this(file, sheet, line, null, column, value, reason, fix);
    }

    /** {@link #fix} under its earlier name. */
    public String mend() {
        return fix;
    }

    /** {@code trucks.csv, line 7, vin "1X": has 2 characters, a VIN has 17. Fix: copy all 17 characters.} */
    @Override
    public String toString() {
        StringBuilder words = new StringBuilder(file);
        if (sheet != null) {
            words.append(", sheet \"").append(sheet).append('"');
        }
        words.append(", ").append(cell != null ? cell : (sheet == null ? "line " : "row ") + line);
        if (!column.isEmpty()) {
            words.append(", ").append(column);
            words.append(value.isEmpty() ? " (empty)" : " \"" + value + "\"");
        }
        return words.append(": ")
                .append(reason)
                .append(". Fix: ")
                .append(fix)
                .append('.')
                .toString();
    }
}
