package dev.injectorplanner.imports;

import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.util.List;

/**
 * Takes what a file holds, in the order of the file (sheets of a workbook: in the order of {@link Tables#ALL}). Every
 * row that is not blank arrives once, in {@link #row} or in {@link #refused}.
 */
public interface RowReceiver {
    /** A row that is right in itself. A row that repeats an earlier one word for word arrives here again. */
    <R> void row(Table<R> table, RowPlace place, R row);

    /** A row that is refused, with all that was found wrong with it: at least one complaint. */
    void refused(Table<?> table, RowPlace place, List<Complaint> complaints);

    /** Something to know about the file as a whole. */
    default void remark(Remark remark) {}
}
