package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.allocation.Shipment;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.parts.OverdueLine;
import dev.injectorplanner.reports.parts.OrderColumns;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.workbook.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
                .table("Order now", OrderColumns.MAIL, now);
        planned.plan().records().of(depot).sentences().forEach(line -> letter.say("RECORDS. " + line));
        return Optional.of(Workbooks.along(
                withQuestions(letter, planned, depot),
                "parts-needs-" + Workbooks.inFileName(depot) + ".xlsx",
                new PartsWorkbook(planned.fleet(), planned.plan())::write,
                "Needs by week, short list and cores are in the workbook."));
    }

    /** Transfers that the plan proposes, and order lines past their day. */
    private static Letter withQuestions(Letter letter, Planned planned, String depot) {
        Letter more = letter;
        List<Shipment> transfers = planned.plan().parts().transfers().stream()
                .filter(each -> each.depot().equals(depot) || each.from().equals(depot))
                .toList();
        if (!transfers.isEmpty()) {
            more = more.tableOf(
                    "Transfers between depots",
                    List.of("Send on", "From", "To", "Parts", "Arrives", "For truck"),
                    transfers.stream().map(OrderLetter::transfer).toList());
        }
        List<OverdueLine> overdue = planned.plan().parts().overdue().stream()
                .filter(line -> line.depot().equals(depot))
                .toList();
        return overdue.isEmpty()
                ? more
                : more.tableOf(
                        "Orders past their day, not counted until a new day is confirmed",
                        List.of("Question", "Order", "Part", "Expected"),
                        overdue.stream()
                                .map(line -> List.of(
                                        line.question(),
                                        line.order(),
                                        line.part(),
                                        line.expectedOn().toString()))
                                .toList());
    }

    private static List<String> transfer(Shipment shipment) {
        return List.of(
                shipment.sendOn().toString(),
                shipment.from(),
                shipment.depot(),
                shipment.pieces().entrySet().stream()
                        .map(each -> Words.quantity(each.getValue()) + " " + each.getKey())
                        .collect(Collectors.joining(", ")),
                shipment.readyOn().toString(),
                shipment.truck());
    }
}
