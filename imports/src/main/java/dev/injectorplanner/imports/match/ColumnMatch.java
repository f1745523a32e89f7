package dev.injectorplanner.imports.match;

import java.util.Map;

/**
 * What one heading of a foreign file means.
 *
 * @param heading the heading as it is written; a second one of the same words has {@code (2)} behind it
 * @param column heading of the table's column, with the unit of this file, such as {@code odometer_mi}; empty: not used;
 *     {@link FileMatch#ASK} where a person must say
 * @param values cells that mean another word, by the cell
 * @param asAbove whether a blank cell means the same as the one above it, as in merged areas
 * @param dropsShortened whether numbers that a spreadsheet shortened are left empty
 * @param namesAlike whether a name means the stored one that differs in case, spaces and signs alone
 */
public record ColumnMatch(
        String heading,
        String column,
        Map<String, String> values,
        boolean asAbove,
        boolean dropsShortened,
        boolean namesAlike) {
    public ColumnMatch {
        values = Map.copyOf(values);
    }

    static ColumnMatch of(String heading, String column) {
        return new ColumnMatch(heading, column, Map.of(), false, false, false);
    }

    /** A heading that is not used. */
    public static ColumnMatch unused(String heading) {
        return of(heading, "");
    }

    public boolean used() {
        return !column.isEmpty();
    }

    public ColumnMatch to(String other) {
        return new ColumnMatch(heading, other, values, asAbove, dropsShortened, namesAlike);
    }

    public ColumnMatch with(Map<String, String> words) {
        return new ColumnMatch(heading, column, words, asAbove, dropsShortened, namesAlike);
    }

    public ColumnMatch withAsAbove(boolean above) {
        return new ColumnMatch(heading, column, values, above, dropsShortened, namesAlike);
    }

    public ColumnMatch withDropsShortened(boolean drops) {
        return new ColumnMatch(heading, column, values, asAbove, drops, namesAlike);
    }

    public ColumnMatch withNamesAlike(boolean alike) {
        return new ColumnMatch(heading, column, values, asAbove, dropsShortened, alike);
    }
}
