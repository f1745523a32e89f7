package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.workbook.Words;
import java.util.List;
import java.util.Optional;

/** What a depot's buyer places now. */
final class OrderLetter {
    private OrderLetter() {}

    static Optional<Digests.Lettered> find(Planned planned, String depot) {
        List<OrderLine> now = planned.plan().parts().orders().stream()
                .filter(line -> line.now() && line.depot().equals(depot) && line.quantity() > 0)
                .toList();
        if (now.isEmpty()) {
            return Optional.empty();
        }
        long late = now.stream().filter(OrderLine::late).count();
        Letter letter = new Letter(
                        "Order list, " + depot + ": " + AlertLetter.count(now.size(), "line") + " to place now")
                .say(
                        late == 0
                                ? "All arrive in time if ordered by the date shown."
                                : late
                                        + " of them may be late at the longest lead time: request express shipment, or postpone the visit.")
                .tableOf(
                        "Order now",
                        List.of("Order by", "Supplier", "Part", "Description", "Quantity", "For week", "Trucks"),
                        now.stream().map(OrderLetter::row).toList());
        return Optional.of(Workbooks.along(
                letter,
                "parts-needs-" + Workbooks.inFileName(depot) + ".xlsx",
                new PartsWorkbook(planned.fleet(), planned.plan())::write,
                "Needs by week, short list and cores are in the workbook."));
    }

    private static List<String> row(OrderLine line) {
        return List.of(
                line.late()
                        ? "now, order date missed: " + line.orderBy()
                        : line.orderBy().toString(),
                line.supplier(),
                line.part(),
                line.description(),
                Words.quantity(line.quantity()),
                line.firstWeek() == null ? "reserve" : line.firstWeek().toString(),
                String.join(" ", line.trucks()));
    }
}
