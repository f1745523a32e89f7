package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Sheets {@code Needs by week}, of planned visits, and {@code Unplanned need}, of failures that no plan foresees. */
final class NeedSheets {
    private static final List<SheetColumn> UNPLANNED_COLUMNS = List.of(
            SheetColumn.of("Depot", Format.TEXT, 13),
            SheetColumn.of("Part", Format.TEXT, 13),
            SheetColumn.of("Description", Format.WRAPPED, 28),
            SheetColumn.summed("Injectors in service", Format.WHOLE, 10),
            SheetColumn.of("Days to cover, min", Format.WHOLE, 9),
            SheetColumn.of("Days to cover, max", Format.WHOLE, 9),
            SheetColumn.summed("Expected failures", Format.TWO_DECIMALS, 10),
            SheetColumn.summed("Safety stock", Format.WHOLE, 8),
            SheetColumn.summed("Free", Format.QUANTITY, 8),
            SheetColumn.summed("Missing", Format.QUANTITY, 9),
            SheetColumn.of("Covered by free stock, %", Format.ONE_DECIMAL, 11),
            SheetColumn.of("Method", Format.TEXT, 24),
            SheetColumn.of("Error up to, %", Format.TWO_DECIMALS, 10));

    private final Plan plan;
    private final String remark;
    private final Descriptions descriptions;

    NeedSheets(Plan plan, String remark, Descriptions descriptions) {
        this.plan = plan;
        this.remark = remark;
        this.descriptions = descriptions;
    }

    void write(Book book) {
        byWeek(book);
        unplanned(book);
    }

    private void byWeek(Book book) {
        TableSheet sheet = book.table(
                "Needs by week",
                "What each week's visits need and what will be available",
                remark + ". To have: enough for the service level; used: on average.",
                List.of(
                        SheetColumn.of("Week", Format.TEXT, 10),
                        SheetColumn.of("Monday", Format.DATE, 12),
                        SheetColumn.of("Depot", Format.TEXT, 13),
                        SheetColumn.of("Part", Format.TEXT, 13),
                        SheetColumn.of("Description", Format.WRAPPED, 30),
                        SheetColumn.summed("Used on average", Format.TWO_DECIMALS, 10),
                        SheetColumn.summed("To have", Format.QUANTITY, 9),
                        SheetColumn.of("On hand before", Format.QUANTITY, 10),
                        SheetColumn.of("Arriving that week", Format.QUANTITY, 11),
                        SheetColumn.summed("Missing", Format.QUANTITY, 9),
                        SheetColumn.of("Left after", Format.QUANTITY, 9),
                        SheetColumn.of("Order by", Format.DATE, 12),
                        SheetColumn.of("For trucks", Format.WRAPPED, 30)));
        for (PartNeed need : plan.partNeeds()) {
            sheet.row(
                    need.week(),
                    need.week().monday(),
                    need.depot(),
                    need.part(),
                    descriptions.of(need.part()),
                    need.needed(),
                    need.required(),
                    need.onHandBefore(),
                    need.arriving(),
                    new Formula("MAX(0,G#-H#)", need.missing()),
                    new Formula("MAX(0,H#-G#)", Math.max(0, need.onHandBefore() - need.required())),
                    need.orderBy(),
                    String.join(", ", need.trucks()));
        }
        sheet.finish();
    }

    private void unplanned(Book book) {
        TableSheet sheet = book.table(
                "Safety stock",
                "Safety stock for unplanned failures",
                plan.parts().forecastKnown()
                        ? remark + ". Until an order placed at the buyer's next review arrives."
                        : remark + ". No forecast of unplanned failures yet: it needs life curves.",
                UNPLANNED_COLUMNS);
        for (UnplannedNeed need : plan.parts().unplannedNeeds()) {
            sheet.row(
                    need.depot(),
                    need.part(),
                    descriptions.of(need.part()),
                    need.injectors(),
                    need.daysLeast(),
                    need.daysMost(),
                    need.expected(),
                    need.target(),
                    need.free(),
                    new Formula("MAX(0,H#-I#)", need.missing()),
                    100 * need.covered(),
                    need.method(),
                    100 * need.errorBound());
        }
        if (!plan.parts().forecastKnown()) {
            @Nullable Object[] none = new @Nullable Object[UNPLANNED_COLUMNS.size()];
            none[0] = "none yet";
            none[2] = "no forecast of unplanned need yet";
            sheet.row(none);
        }
        sheet.finish();
    }
}
