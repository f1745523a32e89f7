package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Words;
import java.util.List;

/** What is told of lines to order. */
public final class OrderColumns {
    static final TableColumn<OrderLine> SUPPLIER = TableColumn.text("Supplier", 23, OrderLine::supplier);
    static final TableColumn<OrderLine> ORDER_BY = TableColumn.date("Order by", 12, OrderLine::orderBy);
    static final TableColumn<OrderLine> PART = TableColumn.text("Part", 12, OrderLine::part);
    static final TableColumn<OrderLine> DESCRIPTION = TableColumn.wrapped("Description", 26, OrderLine::description);
    static final TableColumn<OrderLine> DEPOT = TableColumn.text("Depot", 12, OrderLine::depot);
    static final TableColumn<OrderLine> PIECES = TableColumn.<OrderLine>count("Order, pieces", 8, OrderLine::quantity)
            .written(Format.QUANTITY)
            .summed();
    static final TableColumn<OrderLine> VALUE =
            TableColumn.<OrderLine>money("Order value", 12, OrderLine::value).summed();
    static final TableColumn<OrderLine> DEPOSITS = TableColumn.<OrderLine>money(
                    "Core deposits", 12, OrderLine::deposits)
            .summed();
    static final TableColumn<OrderLine> ARRIVES = TableColumn.date("Arrives by, at the latest", 13, OrderLine::thereBy);
    static final TableColumn<OrderLine> IN_TIME = TableColumn.text("In time", 9, line -> line.late() ? "late" : "yes");
    static final TableColumn<OrderLine> TRUCKS =
            TableColumn.wrapped("For trucks", 24, line -> String.join(", ", line.trucks()));
    static final TableColumn<OrderLine> SHIPMENT =
            TableColumn.text("Shipment", 10, line -> line.express() ? "express" : "ordinary");

    /** On the buyer's page. */
    public static final List<TableColumn<OrderLine>> PAGE = List.of(
            PART,
            DESCRIPTION,
            SUPPLIER,
            DEPOT,
            PIECES,
            ORDER_BY,
            ARRIVES,
            IN_TIME.valued(line -> line.late() ? "late: order date missed" : "yes"),
            VALUE,
            TRUCKS.valued(line -> line.trucks().isEmpty() ? "safety stock" : String.join(", ", line.trucks())));

    /** In the buyer's mail. */
    public static final List<TableColumn<OrderLine>> MAIL = List.of(
            ORDER_BY.valued(line -> line.late() ? "now, order date missed: " + line.orderBy() : line.orderBy()),
            SUPPLIER,
            PART,
            DESCRIPTION,
            PIECES.headed("Quantity")
                    .valued(line -> Words.quantity(line.quantity()) + (line.express() ? " by express" : "")),
            TableColumn.text("For week", 10, line -> line.firstWeek() == null ? "reserve" : line.firstWeek()),
            TRUCKS);

    private OrderColumns() {}
}
