package dev.injectorplanner.reports.parts;

import static dev.injectorplanner.reports.parts.OrderColumns.ARRIVES;
import static dev.injectorplanner.reports.parts.OrderColumns.DEPOSITS;
import static dev.injectorplanner.reports.parts.OrderColumns.DEPOT;
import static dev.injectorplanner.reports.parts.OrderColumns.DESCRIPTION;
import static dev.injectorplanner.reports.parts.OrderColumns.IN_TIME;
import static dev.injectorplanner.reports.parts.OrderColumns.ORDER_BY;
import static dev.injectorplanner.reports.parts.OrderColumns.PART;
import static dev.injectorplanner.reports.parts.OrderColumns.PIECES;
import static dev.injectorplanner.reports.parts.OrderColumns.SHIPMENT;
import static dev.injectorplanner.reports.parts.OrderColumns.SUPPLIER;
import static dev.injectorplanner.reports.parts.OrderColumns.TRUCKS;
import static dev.injectorplanner.reports.parts.OrderColumns.VALUE;

import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.ShelfState;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Sheets {@code Order now} and {@code Order later}: quantities are formulas over what is missing, pack and least order. */
final class OrderSheets {
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
        SheetTable.add(book, tab, title, remark + "." + more, columns(), lines).printing(17);
    }

    private List<TableColumn<OrderLine>> columns() {
        return List.of(
                SUPPLIER,
                TableColumn.date("Order on", 12, OrderLine::placeOn),
                ORDER_BY,
                PART,
                DESCRIPTION,
                DEPOT,
                pieces("For visits", 10, OrderLine::forVisits).summed(),
                pieces("For safety stock", 11, OrderLine::forReserve).summed(),
                pieces("Surplus", 9, OrderLine::leftOver),
                TableColumn.count("Pack", 7, OrderLine::pack),
                TableColumn.count("Minimum order", 11, OrderLine::minimumOrder),
                PIECES.valued(line ->
                        new Formula("IF(G#+H#-I#<=0,0,CEILING(ROUND(MAX(G#+H#-I#,K#),6),J#))", line.quantity())),
                TableColumn.money("Price", 10, OrderLine::price),
                VALUE.valued(line -> new Formula("L#*M#", line.value().doubleValue())),
                DEPOSITS.valued(line -> new Formula("L#*S#", line.deposits().doubleValue())),
                ARRIVES,
                IN_TIME,
                TRUCKS,
                TableColumn.money("Deposit of one", 10, OrderLine::coreDeposit),
                SHIPMENT,
                pieces("Needed", 9, ofShelf(ShelfState::needed)),
                pieces("On hand", 9, ofShelf(ShelfState::onHand)),
                pieces("On order", 9, ofShelf(ShelfState::onOrder)),
                TableColumn.date("Next expected", 12, ofShelf(ShelfState::nextOn)));
    }

    private static TableColumn<OrderLine> pieces(
            String heading, int width, Function<OrderLine, @Nullable Object> value) {
        return TableColumn.count(heading, width, value).written(Format.QUANTITY);
    }

    private Function<OrderLine, @Nullable Object> ofShelf(Function<ShelfState, @Nullable Object> value) {
        return line -> {
            ShelfState shelf = shelves.get(line.depot() + "\n" + line.part());
            return shelf == null ? null : value.apply(shelf);
        };
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
