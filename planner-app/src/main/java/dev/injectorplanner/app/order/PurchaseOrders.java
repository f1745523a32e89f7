package dev.injectorplanner.app.order;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.stock.OnHandStock;
import dev.injectorplanner.app.stock.OpenOrders;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Orders as the buyer works with them: placed under the site's own numbers, confirmed, received in parts, cancelled. Each
 * change is one transaction with its note of who and when; buyers take turns; a form that is sent twice counts once.
 */
public final class PurchaseOrders {
    /** Begins the numbers of orders to suppliers. */
    public static final String ORDER = "PO";

    private final Store store;

    public PurchaseOrders(Store store) {
        this.store = store;
    }

    /** A change within its transaction; what it returns is kept as the form's answer. */
    interface Change {
        String make(Connection connection, StoreWriter writer, OrderActions actions) throws SQLException;
    }

    /** Open lines, the earliest expected first. */
    public List<PurchaseLine> open() {
        List<PurchaseLine> lines = store.inJointTransaction((connection, writer) -> writer.all(PurchaseLine.class));
        return lines.stream()
                .filter(line -> line.openQuantity() > 0)
                .sorted(Comparator.comparing(PurchaseLine::expectedOn)
                        .thenComparing(PurchaseLine::order)
                        .thenComparing(PurchaseLine::part)
                        .thenComparing(PurchaseLine::depot))
                .toList();
    }

    /**
     * Places an order with one supplier.
     *
     * @param key names the form
     * @param lines at least one; two lines of one part and depot are one
     * @return the order's number
     * @throws RefusedEntryException with all that is wrong
     */
    public String place(String key, String supplier, List<NewLine> lines, Instant at, String by) {
        return once(key, at, by, (connection, writer, actions) -> {
            check(supplier, lines, writer);
            String number = actions.nextNumber(ORDER);
            Map<OrderRef, PurchaseLine> rows = new HashMap<>();
            for (NewLine line : lines) {
                PurchaseLine row =
                        new PurchaseLine(number, line.part(), line.depot(), line.quantity(), line.dueOn(), null);
                rows.merge(OrderRef.of(row), row, PurchaseOrders::added);
            }
            List<PurchaseLine> sorted = rows.values().stream()
                    .sorted(Comparator.comparing(PurchaseLine::depot).thenComparing(PurchaseLine::part))
                    .toList();
            writer.merge(PurchaseLine.class, sorted, true);
            note(
                    connection,
                    at,
                    by,
                    "place an order",
                    number + ", " + supplier,
                    "",
                    sorted.stream().map(PurchaseOrders::words).collect(Collectors.joining("; ")));
            return number;
        });
    }

    private static PurchaseLine added(PurchaseLine one, PurchaseLine other) {
        LocalDate due = one.dueOn().isBefore(other.dueOn()) ? one.dueOn() : other.dueOn();
        return new PurchaseLine(one.order(), one.part(), one.depot(), one.quantity() + other.quantity(), due, null);
    }

    private static void check(String supplier, List<NewLine> lines, StoreWriter writer) {
        EntryProblems problems = new EntryProblems();
        if (lines.isEmpty()) {
            problems.add("order", "no line is chosen", "tick at least one line with a quantity");
        }
        Map<String, Part> parts = writer.all(Part.class).stream().collect(Collectors.toMap(Part::part, part -> part));
        for (int i = 0; i < lines.size(); i++) {
            NewLine line = lines.get(i);
            String where = line.part() + " for " + line.depot() + ", ";
            Part part = parts.get(line.part());
            if (part == null || !part.supplier().equals(supplier)) {
                problems.add("quantity" + i, where + "is not sold by " + supplier, "order it from its own supplier");
            }
            problems.guarded("quantity" + i, () -> Require.positive(where + "quantity", line.quantity()));
        }
        problems.throwIfAny();
    }

    /**
     * Notes what the supplier confirmed.
     *
     * @param day the day it is to come
     * @param quantity pieces of the whole line, no fewer than have come
     * @param price price of one, or null where none was confirmed
     */
    public void confirm(
            String key,
            OrderRef ref,
            LocalDate day,
            double quantity,
            @Nullable BigDecimal price,
            Instant at,
            String by) {
        once(key, at, by, (connection, writer, actions) -> {
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            EntryProblems problems = new EntryProblems();
            problems.guarded(
                    "quantity",
                    () -> new PurchaseLine(
                            line.order(),
                            line.part(),
                            line.depot(),
                            quantity,
                            line.dueOn(),
                            null,
                            day,
                            line.received(),
                            price));
            problems.throwIfAny();
            PurchaseLine now = orders.keep(new PurchaseLine(
                    line.order(),
                    line.part(),
                    line.depot(),
                    quantity,
                    line.dueOn(),
                    quantity > line.received() ? null : day,
                    day,
                    line.received(),
                    price == null ? line.price() : price));
            note(connection, at, by, "confirm an order line", ref.toString(), words(line), words(now));
            return "confirmed";
        });
    }

    /**
     * Takes counted parts in against a line: stock of the depot goes up by what came, the rest of the line stays open.
     *
     * @param day the day it came
     */
    public void receive(String key, OrderRef ref, double pieces, LocalDate day, Instant at, String by) {
        once(key, at, by, (connection, writer, actions) -> {
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            PurchaseLine now = orders.receive(line, pieces, day);
            new OnHandStock(writer, ref.depot()).add(ref.part(), pieces);
            note(connection, at, by, "receive against an order", ref.toString(), words(line), words(now));
            return "received";
        });
    }

    /** Cancels what has not come of a line. What has come stays; of a transfer the rest goes back to its depot. */
    public void cancel(String key, OrderRef ref, String why, LocalDate day, Instant at, String by) {
        once(key, at, by, (connection, writer, actions) -> {
            if (why.isBlank()) {
                throw RefusedEntryException.of("why", "reason: is empty", "enter why the line is cancelled");
            }
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            Transfers.takeBack(connection, writer, line);
            if (line.received() > 0) {
                orders.keep(new PurchaseLine(
                        line.order(),
                        line.part(),
                        line.depot(),
                        line.received(),
                        line.dueOn(),
                        day,
                        line.confirmedOn(),
                        line.received(),
                        line.price()));
            } else {
                StoreSql.update(
                        connection,
                        "delete from purchase_line where purchase_order = ? and part = ? and depot = ?",
                        ref.order(),
                        ref.part(),
                        ref.depot());
            }
            note(connection, at, by, "cancel an order line", ref.toString(), words(line), "because: " + why);
            return "cancelled";
        });
    }

    String once(String key, Instant at, String by, Change change) {
        return store.inJointTransaction((connection, writer) -> {
            OrderActions actions = new OrderActions(connection);
            actions.takeTurn();
            var there = actions.findDone(key);
            if (there.isPresent()) {
                return there.get();
            }
            String result = change.make(connection, writer, actions);
            actions.done(key, result, at, by);
            return result;
        });
    }

    static void note(
            Connection connection, Instant at, String by, String what, String subject, String before, String after)
            throws SQLException {
        AuditTrail.write(connection, at, by, what, subject, before, after);
    }

    /** {@code KV-8140 for Aldermoor: 8, 2 received, expected 2026-03-12, 480.00 each}. */
    static String words(PurchaseLine line) {
        return line.part() + " for " + line.depot() + ": " + Require.plain(line.quantity())
                + (line.received() > 0 ? ", " + Require.plain(line.received()) + " received" : "")
                + (line.receivedOn() == null ? ", expected " + line.expectedOn() : ", closed " + line.receivedOn())
                + (line.price() == null ? "" : ", " + line.price().toPlainString() + " each");
    }
}
