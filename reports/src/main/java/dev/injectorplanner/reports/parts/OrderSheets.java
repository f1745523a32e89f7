package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.ShelfState;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Sheets {@code Order now} and {@code Order later}: quantities are formulas over what is missing, pack and least order. */
final class OrderSheets {
    private static final List<SheetColumn> COLUMNS = List.of(
            SheetColumn.of("Supplier", Format.TEXT, 23),
            SheetColumn.of("Order on", Format.DATE, 12),
            SheetColumn.of("Order by", Format.DATE, 12),
            SheetColumn.of("Part", Format.TEXT, 12),
            SheetColumn.of("Description", Format.WRAPPED, 26),
            SheetColumn.of("Depot", Format.TEXT, 12),
            SheetColumn.summed("For visits", Format.QUANTITY, 10),
            SheetColumn.summed("For safety stock", Format.QUANTITY, 11),
            SheetColumn.of("Surplus", Format.QUANTITY, 9),
            SheetColumn.of("Pack", Format.WHOLE, 7),
            SheetColumn.of("Minimum order", Format.WHOLE, 7),
            SheetColumn.summed("Order, pieces", Format.QUANTITY, 8),
            SheetColumn.of("Price", Format.TWO_DECIMALS, 10),
            SheetColumn.summed("Order value", Format.TWO_DECIMALS, 12),
            SheetColumn.summed("Core deposits", Format.TWO_DECIMALS, 12),
            SheetColumn.of("Arrives by, at the latest", Format.DATE, 13),
            SheetColumn.of("In time", Format.TEXT, 9),
            SheetColumn.of("For trucks", Format.WRAPPED, 24),
            SheetColumn.of("Deposit of one", Format.TWO_DECIMALS, 10),
            SheetColumn.of("Shipment", Format.TEXT, 10),
            SheetColumn.of("Needed", Format.QUANTITY, 9),
            SheetColumn.of("On hand", Format.QUANTITY, 9),
            SheetColumn.of("On order", Format.QUANTITY, 9),
            SheetColumn.of("Next expected", Format.DATE, 12));

    static final String NOW = "Order now";
    static final String LATER = "Order later";

    private final List<OrderLine> now;
    private final List<OrderLine> later;
    private final String remark;
    private final Map<String, ShelfState> shelves = new HashMap<>();

    OrderSheets(Plan plan, String remark) {
        plan.parts().shelves().forEach(shelf -> shelves.put(shelf.depot() + "\n" + shelf.part(), shelf));
        this.now = plan.parts().orders().stream().filter(OrderLine::now).toList();
        this.later = plan.parts().orders().stream().filter(line -> !line.now()).toList();
        this.remark = remark;
    }

    void now(Book book) {
        write(book, NOW, "Order now", " Lines for the same supplier go out together.", now);
    }

    void later(Book book) {
        write(book, LATER, "Order later, one order per supplier and week", "", later);
    }

    private void write(Book book, String tab, String title, String more, List<OrderLine> lines) {
        TableSheet sheet = book.table(tab, title, remark + "." + more, COLUMNS);
        lines.forEach(line -> row(sheet, line, shelves.get(line.depot() + "\n" + line.part())));
        sheet.finish().printing(17);
    }

    private static void row(TableSheet sheet, OrderLine line, @Nullable ShelfState shelf) {
        sheet.row(
                line.supplier(),
                line.placeOn(),
                line.orderBy(),
                line.part(),
                line.description(),
                line.depot(),
                line.forVisits(),
                line.forReserve(),
                line.leftOver(),
                line.pack(),
                line.minimumOrder(),
                new Formula("IF(G#+H#-I#<=0,0,CEILING(ROUND(MAX(G#+H#-I#,K#),6),J#))", line.quantity()),
                line.price(),
                new Formula("L#*M#", line.value().doubleValue()),
                new Formula("L#*S#", line.deposits().doubleValue()),
                line.thereBy(),
                line.late() ? "late" : "yes",
                String.join(", ", line.trucks()),
                line.coreDeposit(),
                line.express() ? "express" : "ordinary",
                shelf == null ? null : shelf.needed(),
                shelf == null ? null : shelf.onHand(),
                shelf == null ? null : shelf.onOrder(),
                shelf == null ? null : shelf.nextOn());
    }

    /** Pieces of a shelf that advised orders bring within days, as the sheets stand. Cells: part, depot, after, until. */
    String arriving(String part, String depot, String after, String until) {
        return sum(NOW, now.size(), part, depot, after, until) + "+"
                + sum(LATER, later.size(), part, depot, after, until);
    }

    private static String sum(String tab, int rows, String part, String depot, String after, String until) {
        int first = TableSheet.firstRow();
        int last = first + Math.max(1, rows) - 1;
        return ("SUMIFS('%1$s'!$L$%2$d:$L$%3$d,'%1$s'!$D$%2$d:$D$%3$d,%4$s,'%1$s'!$F$%2$d:$F$%3$d,%5$s,"
                        + "'%1$s'!$P$%2$d:$P$%3$d,\">\"&%6$s,'%1$s'!$P$%2$d:$P$%3$d,\"<=\"&%7$s)")
                .formatted(tab, first, last, part, depot, after, until);
    }
}
