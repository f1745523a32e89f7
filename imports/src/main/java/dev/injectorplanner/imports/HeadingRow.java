package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.GroupedHeadings;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.table.Table;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which of the first rows of a sheet holds the headings: one that a kept match knows, else one that has the columns of a
 * table, else the first. Headings may lie over two rows, with groups above.
 */
final class HeadingRow {
    /** Rows that are looked at: titles, a day of printing and a legend are not longer. */
    static final int LOOKED_AT = 40;

    private final ReadSettings settings;
    private final @Nullable Table<?> named;
    private List<String> headings = List.of();
    private boolean overTwoRows;
    private @Nullable FileMatch match;

    /** @param named the table that the file must hold by what was said or by its name, or null */
    HeadingRow(ReadSettings settings, @Nullable Table<?> named) {
        this.settings = settings;
        this.named = named;
    }

    /** Its place among rows that are not blank, from 0; of headings over two rows the lower one. */
    int choose(List<String[]> first) {
        for (boolean two : new boolean[] {false, true}) {
            for (int i = two ? 1 : 0; i < first.size(); i++) {
                FileMatch found = known(headings(first, i, two));
                if (found != null) {
                    match = found;
                    return chosen(first, i, two);
                }
            }
        }
        for (boolean two : new boolean[] {false, true}) {
            for (int i = two ? 1 : 0; i < first.size(); i++) {
                if (fits(headings(first, i, two), true)) {
                    return chosen(first, i, two);
                }
            }
        }
        int row = 0;
        while (row < first.size() && !fits(headings(first, row, false), false)) {
            row++;
        }
        return chosen(first, row < first.size() ? row : 0, false);
    }

    private static List<String> headings(List<String[]> first, int row, boolean two) {
        List<String> own = List.of(first.get(row));
        return two ? GroupedHeadings.join(List.of(first.get(row - 1)), own) : own;
    }

    private int chosen(List<String[]> first, int row, boolean two) {
        headings = headings(first, row, two);
        overTwoRows = two;
        return row;
    }

    private @Nullable FileMatch known(List<String> row) {
        FileMatch found = settings.findMatch(row);
        boolean other =
                found != null && settings.as() != null && !settings.as().name().equals(found.table());
        return other ? null : found; // what is said now goes before what was kept
    }

    private boolean fits(List<String> row, boolean withUnits) {
        Table<?> table = named == null ? TableFinder.byHeadings(row) : named;
        if (table == null) {
            return false;
        }
        HeadingMatch<?> fit = new HeadingMatch<>(table, row, settings.dates());
        return fit.missing().isEmpty() && (!withUnits || fit.withoutUnit().isEmpty());
    }

    /** The headings of the row that was chosen. */
    List<String> headings() {
        return headings;
    }

    /** Whether groups stand in the row above. */
    boolean overTwoRows() {
        return overTwoRows;
    }

    /** The kept match that knows the headings, or null. */
    @Nullable
    FileMatch match() {
        return match;
    }
}
