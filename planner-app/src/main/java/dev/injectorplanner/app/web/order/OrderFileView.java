package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.order.DeliveryProblem;
import dev.injectorplanner.app.order.OrderEvent;
import dev.injectorplanner.app.order.OrderFile;
import dev.injectorplanner.app.order.OrderHead;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One order as its page shows it.
 *
 * @param supplier who gets it
 * @param placed when and by whom, in words
 * @param splitFrom the order it was split from, or empty
 * @param mailed where it was mailed to, or empty
 * @param value order value
 * @param deposits core deposits, or empty
 * @param open pieces still to come
 * @param steps the order's way: ordered, confirmed, received, closed
 */
public record OrderFileView(
        String order,
        String supplier,
        String placed,
        String splitFrom,
        String mailed,
        String value,
        String deposits,
        String open,
        boolean transfer,
        List<Step> steps,
        List<Row> rows,
        List<ProblemRow> problems,
        List<EventRow> events) {

    /** A step of the order's way: {@code past}, {@code now} or {@code later}. */
    public record Step(String mark, String name, String words, String when) {}

    /** A line with what its forms need. */
    public record Row(
            String key,
            String part,
            String description,
            String depot,
            String quantity,
            String received,
            String open,
            double openPieces,
            String each,
            String sum,
            String expected,
            String expectedOn,
            String price,
            String state,
            String mark,
            boolean serials) {
        public boolean stillOpen() {
            return openPieces > 0;
        }

        public boolean splittable() {
            return openPieces > 1;
        }
    }

    /** A delivery problem. */
    public record ProblemRow(
            String key,
            String number,
            String order,
            String what,
            String noted,
            String amount,
            String plainAmount,
            String state,
            String mark,
            String answer,
            boolean toSend,
            boolean toSettle) {}

    /** Something that happened. */
    public record EventRow(String when, String what, String words, String by) {}

    /** What is needed to read an order. */
    record Reader(Map<String, Part> parts, Function<String, LocalDate> today, ZoneId zone) {}

    static OrderFileView of(String order, OrderFile file, List<PurchaseLine> lines, Reader reader) {
        OrderHead head = file.head().orElse(null);
        List<Row> rows = lines.stream().map(line -> row(line, reader)).toList();
        BigDecimal value = sum(lines, line -> price(line, reader).multiply(BigDecimal.valueOf(line.quantity())));
        BigDecimal deposits = sum(lines, line -> {
            Part part = reader.parts().get(line.part());
            return part == null ? BigDecimal.ZERO : part.coreDeposit().multiply(BigDecimal.valueOf(line.quantity()));
        });
        double open = lines.stream().mapToDouble(PurchaseLine::openQuantity).sum();
        boolean transfer = PurchaseLine.isTransfer(order);
        return new OrderFileView(
                order,
                head != null
                        ? head.supplier()
                        : transfer
                                ? "between depots"
                                : lines.isEmpty() ? "" : OrderPapers.supplier(reader.parts(), lines.get(0)),
                head == null
                        ? transfer ? "transfer between depots" : "loaded from a file"
                        : DisplayFormat.shortDate(head.placedOn()) + ", " + head.placedBy(),
                head == null || head.splitFrom() == null ? "" : head.splitFrom(),
                head == null || head.mailedTo() == null ? "" : head.mailedTo(),
                DisplayFormat.cents(value),
                deposits.signum() == 0 ? "" : DisplayFormat.cents(deposits),
                DisplayFormat.pieces(open),
                transfer,
                steps(lines, head),
                rows,
                file.problems().stream().map(OrderFileView::problem).toList(),
                file.events().stream().map(event -> event(event, reader.zone())).toList());
    }

    private static BigDecimal sum(List<PurchaseLine> lines, Function<PurchaseLine, BigDecimal> amount) {
        return lines.stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal price(PurchaseLine line, Reader reader) {
        BigDecimal confirmed = line.price();
        Part part = reader.parts().get(line.part());
        return confirmed != null ? confirmed : part == null ? BigDecimal.ZERO : part.price();
    }

    private static List<Step> steps(List<PurchaseLine> lines, @Nullable OrderHead head) {
        double ordered = lines.stream().mapToDouble(PurchaseLine::quantity).sum();
        double open = lines.stream().mapToDouble(PurchaseLine::openQuantity).sum();
        long confirmed = lines.stream()
                .filter(line -> line.confirmedOn() != null || line.receivedOn() != null)
                .count();
        boolean all = !lines.isEmpty() && confirmed == lines.size();
        boolean any = open < ordered;
        boolean closed = open == 0;
        return List.of(
                new Step("plan", "Ordered", head == null ? "" : DisplayFormat.shortDate(head.placedOn()), "past"),
                new Step(
                        "told",
                        "Confirmed",
                        all ? "all lines" : confirmed + " of " + lines.size() + " lines",
                        all || any ? "past" : "now"),
                new Step(
                        "add",
                        any && !closed ? "Part received" : "Received",
                        DisplayFormat.pieces(ordered - open) + " of " + DisplayFormat.pieces(ordered) + " pieces",
                        closed ? "past" : all || any ? "now" : "later"),
                new Step(
                        "done",
                        "Closed",
                        closed ? "nothing is open" : "when " + DisplayFormat.pieces(open) + " more have come",
                        closed ? "now" : "later"));
    }

    private static Row row(PurchaseLine line, Reader reader) {
        Part part = reader.parts().get(line.part());
        BigDecimal price = line.price();
        double came = line.receivedOn() == null ? line.received() : line.quantity();
        long late = ChronoUnit.DAYS.between(line.expectedOn(), reader.today().apply(line.depot()));
        boolean open = line.openQuantity() > 0;
        return new Row(
                UUID.randomUUID().toString(),
                line.part(),
                part == null ? "" : part.description(),
                line.depot(),
                Require.plain(line.quantity()),
                Require.plain(came),
                Require.plain(line.openQuantity()),
                line.openQuantity(),
                DisplayFormat.cents(price(line, reader)),
                DisplayFormat.cents(price(line, reader).multiply(BigDecimal.valueOf(line.quantity()))),
                DisplayFormat.shortDate(line.expectedOn()),
                line.expectedOn().toString(),
                price == null ? "" : price.toPlainString(),
                state(line, late),
                !open ? "done" : late > 0 ? "care" : line.confirmedOn() == null ? "plan" : "told",
                part != null && part.kind() == PartKind.INJECTOR);
    }

    static String state(PurchaseLine line, long late) {
        LocalDate closed = line.receivedOn();
        if (closed != null) {
            return "closed " + DisplayFormat.shortDate(closed);
        }
        return late > 0
                ? late + (late == 1 ? " day late" : " days late")
                : (line.received() > 0 ? "part received, " : "")
                        + (line.confirmedOn() == null ? "ordered" : "confirmed");
    }

    static ProblemRow problem(DeliveryProblem problem) {
        String credit = problem.credit() == null ? "" : DisplayFormat.cents(problem.credit());
        String state = problem.state();
        boolean open = problem.newLine() == null && problem.credit() == null;
        return new ProblemRow(
                UUID.randomUUID().toString(),
                problem.number(),
                problem.ref().order(),
                DisplayFormat.pieces(problem.pieces()) + " " + problem.ref().part() + " "
                        + problem.kind().words() + ": " + problem.words(),
                DisplayFormat.shortDate(problem.notedOn()) + ", " + problem.notedBy(),
                problem.amount().signum() == 0 ? "" : DisplayFormat.cents(problem.amount()),
                problem.amount().stripTrailingZeros().toPlainString(),
                state,
                switch (state) {
                    case "to send" -> "decide";
                    case "sent" -> "move";
                    case "refused" -> "no";
                    case "credited" -> "done";
                    default -> "add";
                },
                problem.newLine() != null
                        ? "with " + problem.newLine()
                        : problem.settledOn() == null
                                ? problem.sentOn() == null ? "" : "sent " + DisplayFormat.shortDate(problem.sentOn())
                                : DisplayFormat.shortDate(problem.settledOn()) + ", " + problem.settledBy() + ": "
                                        + credit + (problem.reason().isEmpty() ? "" : ", " + problem.reason()),
                open && problem.sentOn() == null,
                open && problem.sentOn() != null);
    }

    private static EventRow event(OrderEvent event, ZoneId zone) {
        return new EventRow(
                DisplayFormat.moment(event.at(), zone),
                DisplayFormat.sentence(event.what()),
                event.words(),
                event.by());
    }
}
