package dev.injectorplanner.app.web.settings;

import java.util.List;

/**
 * A column of a row as a field.
 *
 * @param heading as which it is sent: the column's name
 * @param label what people read
 * @param hint what it means and how it is written
 * @param options what may be chosen; empty where it is typed
 * @param typed its content
 * @param fixed whether it is the row's name and stays
 * @param needed whether it must not be empty
 * @param wrong what is wrong with it; empty where nothing is
 */
record RowField(
        String heading,
        String label,
        String hint,
        List<Option> options,
        String typed,
        boolean fixed,
        boolean needed,
        String wrong) {
    /** A choice: what is sent and what is read. */
    record Option(String value, String words) {}
}
