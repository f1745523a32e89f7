package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.table.Table;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How a file is to be read.
 *
 * @param as the table that the file holds, or null to find it by the name of file or sheet, or by the headings
 * @param dates which of day and month stands first, where the heading does not say
 * @param numbers which sign stands before the decimals, where no match says
 * @param zoneOfTruck time zone of a truck's depot, for times without an offset; null for a truck that is not known
 * @param mostSheetBytes the most that any one part of a workbook may unpack to, bytes
 * @param matches how the files of known sources are read, by {@link FileMatch#key}
 * @param truckOf the truck of a VIN, for files that know their vehicles by it; what is not known comes back as it is
 * @param nameOf the stored name that a cell of a column, such as {@code truck}, means; what is not known comes back as it is
 */
public record ReadSettings(
        @Nullable Table<?> as,
        DateOrder dates,
        NumberForm numbers,
        Function<String, @Nullable ZoneId> zoneOfTruck,
        long mostSheetBytes,
        Map<String, FileMatch> matches,
        UnaryOperator<String> truckOf,
        BinaryOperator<String> nameOf) {
    /** What a part of a workbook may unpack to unless told otherwise: 2 GiB, far above a full sheet of readings. */
    public static final long USUAL_SHEET_BYTES = 2L << 30;

    private static final double ALIKE = 0.6;

    /** Table by name or headings, dates and numbers that can be read two ways refused. */
    public static ReadSettings standard(Function<String, @Nullable ZoneId> zoneOfTruck) {
        return new ReadSettings(
                null,
                DateOrder.UNSTATED,
                NumberForm.UNSTATED,
                zoneOfTruck,
                USUAL_SHEET_BYTES,
                Map.of(),
                vin -> vin,
                (column, cell) -> cell);
    }

    public ReadSettings withAs(@Nullable Table<?> table) {
        return new ReadSettings(table, dates, numbers, zoneOfTruck, mostSheetBytes, matches, truckOf, nameOf);
    }

    public ReadSettings withDates(DateOrder order) {
        return new ReadSettings(as, order, numbers, zoneOfTruck, mostSheetBytes, matches, truckOf, nameOf);
    }

    public ReadSettings withNumbers(NumberForm form) {
        return new ReadSettings(as, dates, form, zoneOfTruck, mostSheetBytes, matches, truckOf, nameOf);
    }

    public ReadSettings withMostSheetBytes(long bytes) {
        return new ReadSettings(as, dates, numbers, zoneOfTruck, bytes, matches, truckOf, nameOf);
    }

    public ReadSettings withMatches(Collection<FileMatch> known) {
        return new ReadSettings(
                as,
                dates,
                numbers,
                zoneOfTruck,
                mostSheetBytes,
                known.stream().collect(Collectors.toMap(FileMatch::key, match -> match, (first, later) -> later)),
                truckOf,
                nameOf);
    }

    public ReadSettings withTruckOf(UnaryOperator<String> lookup) {
        return new ReadSettings(as, dates, numbers, zoneOfTruck, mostSheetBytes, matches, lookup, nameOf);
    }

    public ReadSettings withNameOf(BinaryOperator<String> lookup) {
        return new ReadSettings(as, dates, numbers, zoneOfTruck, mostSheetBytes, matches, truckOf, lookup);
    }

    /** The match whose headings these are, or null. */
    public @Nullable FileMatch findMatch(List<String> headings) {
        return matches.isEmpty() ? null : matches.get(FileMatch.keyOf(headings));
    }

    /** The match of a source that has most of these headings, but not all. */
    public Optional<FileMatch> nearMatch(List<String> headings) {
        return matches.values().stream()
                .filter(match -> match.likeness(headings) >= ALIKE)
                .max(Comparator.comparingDouble(match -> match.likeness(headings)));
    }
}
