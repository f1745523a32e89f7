package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Format;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is told of parts that may come too late. */
public final class ShortColumns {
    static final TableColumn<ShortLine> WEEK = TableColumn.text("Week", 10, ShortLine::week);
    static final TableColumn<ShortLine> DEPOT = TableColumn.text("Depot", 12, ShortLine::depot);
    static final TableColumn<ShortLine> TRUCK = TableColumn.text("Truck", 9, ShortLine::truck);
    static final TableColumn<ShortLine> PART = TableColumn.text("Part", 12, ShortLine::part);
    static final TableColumn<ShortLine> MISSING = TableColumn.<ShortLine>count("Missing", 9, ShortLine::missing)
            .written(Format.QUANTITY)
            .summed();
    static final TableColumn<ShortLine> USUAL = TableColumn.date("Usual arrival", 12, ShortLine::usualArrival);
    static final TableColumn<ShortLine> LATEST = TableColumn.date("At the latest", 12, ShortLine::latestArrival);
    static final TableColumn<ShortLine> ADVICE = TableColumn.wrapped("What to do", 40, ShortColumns::words);
    static final TableColumn<ShortLine> POSTPONING =
            TableColumn.money("Cost to postpone", 10, ShortLine::postponementCost);
    static final TableColumn<ShortLine> EXPRESS = TableColumn.money("Cost of express", 10, ShortLine::expeditePrice);

    private ShortColumns() {}

    /** On the buyer's page: a shipment that several lines of a visit share is priced once. */
    public static List<TableColumn<ShortLine>> page(List<ShortLine> lines) {
        Set<String> visits = new HashSet<>();
        Set<ShortLine> first = lines.stream()
                .filter(line -> visits.add(line.truck() + "\n" + line.week()))
                .collect(Collectors.toSet());
        return List.of(
                TRUCK,
                DEPOT,
                WEEK,
                PART,
                MISSING,
                USUAL,
                LATEST,
                ADVICE,
                EXPRESS.headed("Shipment")
                        .valued(line -> first.contains(line) ? line.expeditePrice() : "with the above"),
                POSTPONING,
                TableColumn.text("Postpone to", 10, ShortLine::moveTo));
    }

    private static String words(ShortLine line) {
        return switch (line.advice()) {
            case ORDER_TODAY -> "order today; the supplier will probably deliver in time";
            case EXPEDITE -> "order express: cheaper than postponing the visit";
            case GO_AHEAD -> "order today and go ahead; it will probably not be needed";
            case TRANSFER -> "transfer from " + (line.fromDepot() == null ? "another depot" : line.fromDepot());
            case MOVE -> "postpone the visit to week " + line.moveTo();
        };
    }
}
