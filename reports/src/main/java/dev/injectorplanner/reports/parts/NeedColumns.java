package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Format;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is told of needs: of planned visits, and of failures that no plan foresees. */
public final class NeedColumns {
    static final TableColumn<PartNeed> WEEK = TableColumn.text("Week", 10, PartNeed::week);
    static final TableColumn<PartNeed> MONDAY =
            TableColumn.date("Monday", 12, need -> need.week().monday());
    static final TableColumn<PartNeed> DEPOT = TableColumn.text("Depot", 13, PartNeed::depot);
    static final TableColumn<PartNeed> PART = TableColumn.text("Part", 13, PartNeed::part);
    static final TableColumn<PartNeed> USED = TableColumn.<PartNeed>count("Used on average", 10, PartNeed::needed)
            .written(Format.TWO_DECIMALS)
            .summed();
    static final TableColumn<PartNeed> TO_HAVE =
            NeedColumns.<PartNeed>pieces("To have", 9, PartNeed::required).summed();
    static final TableColumn<PartNeed> ON_HAND = pieces("On hand before", 10, PartNeed::onHandBefore);
    static final TableColumn<PartNeed> ARRIVING = pieces("Arriving that week", 11, PartNeed::arriving);
    static final TableColumn<PartNeed> MISSING =
            NeedColumns.<PartNeed>pieces("Missing", 9, PartNeed::missing).summed();
    static final TableColumn<PartNeed> ORDER_BY = TableColumn.date("Order by", 12, PartNeed::orderBy);
    static final TableColumn<PartNeed> TRUCKS =
            TableColumn.wrapped("For trucks", 30, need -> String.join(", ", need.trucks()));

    static final TableColumn<UnplannedNeed> SHELF_DEPOT = TableColumn.text("Depot", 13, UnplannedNeed::depot);
    static final TableColumn<UnplannedNeed> SHELF_PART = TableColumn.text("Part", 13, UnplannedNeed::part);
    static final TableColumn<UnplannedNeed> EXPECTED = TableColumn.<UnplannedNeed>count(
                    "Expected failures", 10, UnplannedNeed::expected)
            .written(Format.TWO_DECIMALS)
            .summed();
    static final TableColumn<UnplannedNeed> TARGET = TableColumn.<UnplannedNeed>count(
                    "Safety stock", 8, UnplannedNeed::target)
            .summed();
    static final TableColumn<UnplannedNeed> FREE =
            NeedColumns.<UnplannedNeed>pieces("Free", 8, UnplannedNeed::free).summed();
    static final TableColumn<UnplannedNeed> SHELF_MISSING = NeedColumns.<UnplannedNeed>pieces(
                    "Missing", 9, UnplannedNeed::missing)
            .summed();
    static final TableColumn<UnplannedNeed> COVERED =
            TableColumn.figure("Covered by free stock", Unit.PERCENT, 11, need -> 100 * need.covered());

    /** Safety stock on the buyer's page. */
    public static final List<TableColumn<UnplannedNeed>> SAFETY_STOCK =
            List.of(SHELF_PART, SHELF_DEPOT, EXPECTED, TARGET, FREE, SHELF_MISSING.headed("To order"), COVERED);

    private NeedColumns() {}

    /** Parts that are missing, a line each, at the terminal. */
    public static List<TableColumn<PartNeed>> missing(LocalDate today) {
        return List.of(
                ORDER_BY.valued(need -> orderBy(need, today)),
                DEPOT,
                PART,
                MISSING,
                WEEK.headed("For week"),
                TRUCKS.headed("Trucks"));
    }

    private static Object orderBy(PartNeed need, LocalDate today) {
        LocalDate by = need.orderBy();
        return by == null ? "" : by.isBefore(today) ? "now, order date missed: " + by : by;
    }

    private static <R> TableColumn<R> pieces(String heading, int width, Function<R, @Nullable Object> value) {
        return TableColumn.count(heading, width, value).written(Format.QUANTITY);
    }
}
