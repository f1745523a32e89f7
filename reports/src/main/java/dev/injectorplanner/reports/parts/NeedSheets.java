package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.UnplannedNeed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Sheets {@code Needs by week}, of planned visits, and {@code Unplanned need}, of failures that no plan foresees. */
final class NeedSheets {
    private static final String STOCK = "Safety stock";
    private static final String STOCK_TITLE = "Safety stock for unplanned failures";

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
        SheetTable.add(
                book,
                "Needs by week",
                "What each week's visits need and what will be available",
                remark + ". To have: enough for the service level; used: on average.",
                List.of(
                        NeedColumns.WEEK,
                        NeedColumns.MONDAY,
                        NeedColumns.DEPOT,
                        NeedColumns.PART,
                        TableColumn.wrapped("Description", 30, need -> descriptions.of(need.part())),
                        NeedColumns.USED,
                        NeedColumns.TO_HAVE,
                        NeedColumns.ON_HAND,
                        NeedColumns.ARRIVING,
                        NeedColumns.MISSING.valued(need -> new Formula("MAX(0,G#-H#)", need.missing())),
                        TableColumn.<PartNeed>count("Left after", 9, NeedSheets::left)
                                .written(Format.QUANTITY),
                        NeedColumns.ORDER_BY,
                        NeedColumns.TRUCKS),
                plan.partNeeds());
    }

    private static Formula left(PartNeed need) {
        return new Formula("MAX(0,H#-G#)", Math.max(0, need.onHandBefore() - need.required()));
    }

    private void unplanned(Book book) {
        if (plan.parts().forecastKnown()) {
            SheetTable.add(
                    book,
                    STOCK,
                    STOCK_TITLE,
                    remark + ". Until an order placed at the buyer's next review arrives.",
                    unplannedColumns(need -> descriptions.of(need.part())),
                    plan.parts().unplannedNeeds());
        } else {
            noForecast(book);
        }
    }

    private List<TableColumn<UnplannedNeed>> unplannedColumns(Function<UnplannedNeed, @Nullable Object> description) {
        return List.of(
                NeedColumns.SHELF_DEPOT,
                NeedColumns.SHELF_PART,
                TableColumn.wrapped("Description", 28, description),
                TableColumn.<UnplannedNeed>count("Injectors in service", 10, UnplannedNeed::injectors)
                        .summed(),
                TableColumn.count("Days to cover, min", 9, UnplannedNeed::daysLeast),
                TableColumn.count("Days to cover, max", 9, UnplannedNeed::daysMost),
                NeedColumns.EXPECTED,
                NeedColumns.TARGET,
                NeedColumns.FREE,
                NeedColumns.SHELF_MISSING.valued(need -> new Formula("MAX(0,H#-I#)", need.missing())),
                NeedColumns.COVERED,
                TableColumn.text("Method", 24, UnplannedNeed::method),
                TableColumn.<UnplannedNeed>figure("Error up to", Unit.PERCENT, 10, need -> 100 * need.errorBound())
                        .written(Format.TWO_DECIMALS));
    }

    /** The sheet with its headings and one line that says why there is no other. */
    private void noForecast(Book book) {
        List<TableColumn<String>> columns = new ArrayList<>();
        for (TableColumn<UnplannedNeed> column : unplannedColumns(need -> null)) {
            columns.add(new TableColumn<>(
                    column.heading(), column.unit(), column.format(), column.width(), column.total(), words -> null));
        }
        columns.set(0, columns.get(0).valued(words -> "none yet"));
        columns.set(2, columns.get(2).valued(words -> words));
        SheetTable.add(
                book,
                STOCK,
                STOCK_TITLE,
                remark + ". No forecast of unplanned failures yet: it needs life curves.",
                columns,
                List.of("no forecast of unplanned need yet"));
    }
}
