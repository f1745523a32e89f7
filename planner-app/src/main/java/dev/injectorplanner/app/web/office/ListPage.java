package dev.injectorplanner.app.web.office;

import java.util.List;

/**
 * What a page shows at once of one of its lists.
 *
 * @param rows those shown now, in their order
 * @param from the first of them, counted from 0
 * @param total how many there are in all
 * @param before address that shows those before, or empty
 * @param next address that shows those after, or empty
 */
public record ListPage<R>(List<R> rows, int from, int total, String before, String next) {
    public ListPage {
        rows = List.copyOf(rows);
    }

    /** {@code 26 to 50}, or {@code 26} alone. */
    public String span() {
        int last = from + rows.size();
        return rows.size() == 1 ? String.valueOf(last) : (from + 1) + " to " + last;
    }

    /** {@code 26 to 50 of 130}. */
    public String words() {
        return span() + " of " + total;
    }

    /** Whether there is more than is shown. */
    public boolean hasMore() {
        return total > rows.size();
    }

    /** Whether this is the first part of the list. */
    public boolean isFirst() {
        return from == 0;
    }
}
