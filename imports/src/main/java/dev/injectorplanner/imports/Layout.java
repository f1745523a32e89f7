package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which column stands where in one file or sheet.
 *
 * @param file name of the file
 * @param sheet name of the sheet, or null
 * @param delimiter what stands between cells of a text file; a comma for a sheet
 * @param headings the headings as they stand there
 * @param places one for each known column, in the order of the table
 */
record Layout(String file, @Nullable String sheet, char delimiter, List<String> headings, List<Place> places) {

    /**
     * @param column canonical name
     * @param base the name without its unit
     * @param heading the column's name with the unit that the file has
     * @param at position, from 0
     * @param unit unit of the heading, or null
     * @param dates order of day and month that heading or settings say
     */
    record Place(
            String column,
            String base,
            String heading,
            int at,
            @Nullable ColumnUnit unit,
            DateOrder dates) {}

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
