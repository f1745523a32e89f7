package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.CellText;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Which column stands where in one file or sheet.
 *
 * @param file name of the file
 * @param sheet name of the sheet, or null
 * @param delimiter what stands between cells of a text file; a comma for a sheet
 * @param headings the headings as they stand there
 * @param places one for each known column, in the order of the table
 * @param asAbove positions of cells that mean the same as the one above where they are blank
 */
record Layout(
        String file,
        @Nullable String sheet,
        char delimiter,
        List<String> headings,
        List<Place> places,
        List<Integer> asAbove) {

    /**
     * @param column canonical name
     * @param base the name without its unit
     * @param heading the column's name with the unit that the file has
     * @param at position, from 0
     * @param unit unit of the heading, or null
     * @param dates order of day and month that heading or settings say
     * @param form how its cells are written
     * @param further positions of further cells that are joined to the first by a blank, such as the time behind a date
     * @param fixed the value of every row where the file has no such column, or null
     */
    record Place(
            String column,
            String base,
            String heading,
            int at,
            @Nullable ColumnUnit unit,
            DateOrder dates,
            CellForm form,
            List<Integer> further,
            @Nullable String fixed) {
        /** A column of a file that is written as the templates. */
        Place(String column, String base, String heading, int at, @Nullable ColumnUnit unit, DateOrder dates) {
            this(column, base, heading, at, unit, dates, CellForm.TEMPLATE, List.of(), null);
        }

        /** A column whose numbers are in doubt or were said to be of one form. */
        Place with(CellForm other) {
            return new Place(column, base, heading, at, unit, dates, other, further, fixed);
        }

        /** The cell as it is written, trimmed. */
        String text(String[] cells) {
            if (fixed != null) {
                return fixed;
            }
            String text = at < cells.length ? CellText.trimmed(cells[at]) : "";
            for (int more : further) {
                text = CellText.trimmed(text + " " + (more < cells.length ? cells[more] : ""));
            }
            return text;
        }

        /** The cell with the word that the match gives it. */
        String word(String[] cells) {
            String text = text(cells);
            String word = form.values().get(text.toLowerCase(Locale.ROOT));
            return word == null ? form.names().apply(text) : word;
        }
    }

    /** The place that a column's canonical name or its name without the unit means, or null where the file has none. */
    @Nullable
    Place find(String named) {
        for (Place place : places) {
            if (place.column().equals(named)
                    || place.base().equals(named)
                    || place.heading().equals(named)) {
                return place;
            }
        }
        return null;
    }
}
