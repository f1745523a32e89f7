package dev.injectorplanner.app.intake;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One reason for which rows were refused, said once however many rows it cost.
 *
 * @param file name of the file
 * @param sheet name of the sheet, or null
 * @param table the table, or empty where the file was refused as a whole
 * @param column the column, or empty where the whole row is meant
 * @param reason what is wrong, of the first row
 * @param fix what to do, as far as it is the same for all of them
 * @param rows rows of this file that were refused for it
 * @param places where the first of them are, such as {@code line 7} or {@code F42}
 * @param values the values that were refused, the most frequent first
 * @param moreValues how many further values there are
 * @param takesWith rows of other tables that refer to what was refused here and were refused with it, by table
 */
public record Cause(
        String file,
        @Nullable String sheet,
        String table,
        String column,
        String reason,
        String fix,
        long rows,
        List<String> places,
        List<Value> values,
        int moreValues,
        Map<String, Long> takesWith) {
    /**
     * A value that was refused.
     *
     * @param text the value
     * @param rows in how many rows
     */
    public record Value(String text, long rows) {}

    public Cause {
        places = List.copyOf(places);
        values = List.copyOf(values);
    }

    /** Rows that it cost: its own, and those that went with them. */
    public long cost() {
        return rows + takesWith.values().stream().mapToLong(Long::longValue).sum();
    }
}
