package dev.injectorplanner.imports.cell;

import java.time.ZoneId;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a cell's reading may hang on besides its text.
 *
 * @param column the column's name, as complaints give it
 * @param dates which of day and month stands first
 * @param truck what stands in the truck column of the row, or empty
 * @param zoneOfTruck time zone of a truck's depot
 */
public record CellContext(
        String column, DateOrder dates, String truck, Function<String, @Nullable ZoneId> zoneOfTruck) {}
