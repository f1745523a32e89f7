package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.List;

/** Sheet {@code Short list}: what an order placed today may not bring in time, and the visit that will suffer. */
final class ShortSheet {
    private final Plan plan;
    private final String remark;
    private final Descriptions descriptions;

    ShortSheet(Plan plan, String remark, Descriptions descriptions) {
        this.plan = plan;
        this.remark = remark;
        this.descriptions = descriptions;
    }

    void write(Book book) {
        TableSheet sheet = book.table(
                "Short list",
                "Short list: parts that may arrive too late, and the visit affected",
                remark + ". Costs to postpone, to wait and of express are for the whole visit.",
                List.of(
                        SheetColumn.of("Week", Format.TEXT, 10),
                        SheetColumn.of("Depot", Format.TEXT, 12),
                        SheetColumn.of("Truck", Format.TEXT, 9),
                        SheetColumn.of("Part", Format.TEXT, 12),
                        SheetColumn.of("Description", Format.WRAPPED, 26),
                        SheetColumn.summed("Missing", Format.QUANTITY, 9),
                        SheetColumn.of("Chance it is needed, %", Format.WHOLE, 10),
                        SheetColumn.of("Usual arrival", Format.DATE, 12),
                        SheetColumn.of("At the latest", Format.DATE, 12),
                        SheetColumn.of("What to do", Format.WRAPPED, 40),
                        SheetColumn.of("Cost to postpone", Format.TWO_DECIMALS, 10),
                        SheetColumn.of("Average cost of waiting", Format.TWO_DECIMALS, 11),
                        SheetColumn.of("Cost of express", Format.TWO_DECIMALS, 10)));
        for (ShortLine line : plan.parts().shortList()) {
            sheet.row(
                    line.week(),
                    line.depot(),
                    line.truck(),
                    line.part(),
                    descriptions.of(line.part()),
                    line.missing(),
                    Math.rint(100 * line.chance()),
                    line.usualArrival(),
                    line.latestArrival(),
                    words(line),
                    line.postponementCost(),
                    line.waitingCost(),
                    line.expeditePrice());
        }
        sheet.finish();
    }

    private static String words(ShortLine line) {
        return switch (line.advice()) {
            case ORDER_TODAY -> "order today; the supplier will probably deliver in time";
            case EXPEDITE -> "order express: cheaper than postponing the visit";
            case GO_AHEAD -> "order today and go ahead; it will probably not be needed";
            case TRANSFER -> "transfer from another depot";
            case MOVE -> "postpone the visit to week " + line.moveTo();
        };
    }
}
