package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.table.Table;
import java.time.ZoneId;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How a file is to be read.
 *
 * @param as the table that the file holds, or null to find it by the name of file or sheet, or by the headings
 * @param dates which of day and month stands first, where the heading does not say
 * @param zoneOfTruck time zone of a truck's depot, for times without an offset; null for a truck that is not known
 * @param mostSheetBytes the most that any one part of a workbook may unpack to, bytes
 */
public record ReadSettings(
        @Nullable Table<?> as, DateOrder dates, Function<String, @Nullable ZoneId> zoneOfTruck, long mostSheetBytes) {
    /** What a part of a workbook may unpack to unless told otherwise: 2 GiB, far above a full sheet of readings. */
    public static final long USUAL_SHEET_BYTES = 2L << 30;

    /** Table by name or headings, dates that can be read two ways refused. */
    public static ReadSettings standard(Function<String, @Nullable ZoneId> zoneOfTruck) {
        return new ReadSettings(null, DateOrder.UNSTATED, zoneOfTruck, USUAL_SHEET_BYTES);
    }

    public ReadSettings withAs(@Nullable Table<?> table) {
        return new ReadSettings(table, dates, zoneOfTruck, mostSheetBytes);
    }

    public ReadSettings withDates(DateOrder order) {
        return new ReadSettings(as, order, zoneOfTruck, mostSheetBytes);
    }

    public ReadSettings withMostSheetBytes(long bytes) {
        return new ReadSettings(as, dates, zoneOfTruck, bytes);
    }
}
