package dev.injectorplanner.app.order;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.FormKeys;
import dev.injectorplanner.app.stock.OnHandStock;
import dev.injectorplanner.app.stock.OpenOrders;
import dev.injectorplanner.app.stock.Series;
import dev.injectorplanner.app.store.StockCause;
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
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Orders as the buyer works with them: placed under the site's own numbers, confirmed, received in parts, cancelled. Each
 * change is one transaction with its note of who and when; buyers take turns; a form that is sent twice counts once.
 */
public final class PurchaseOrders {
    private final Store store;

    public PurchaseOrders(Store store) {
        this.store = store;
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
        return place(key, supplier, lines, "", LocalDate.ofInstant(at, ZoneOffset.UTC), at, by);
    }

    /**
     * The same.
     *
     * @param note what the supplier is told beside the lines, or empty
     * @param day the day at the site
     */
    public String place(
            String key, String supplier, List<NewLine> lines, String note, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            check(supplier, lines, writer);
            String number = Series.ORDER.next(connection);
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
            OrderBooks.placed(
                    connection, new OrderHead(number, supplier, day, by, Require.text("note", note), null, null), at);
            OrderBooks.note(
                    connection,
                    at,
                    by,
                    "place an order",
                    number,
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
        FormKeys.once(store, key, at, by, (connection, writer) -> {
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
            OrderBooks.note(
                    connection, at, by, "confirm an order line", ref.order(), ref.toString(), words(line), words(now));
            return "confirmed";
        });
    }

    /**
     * Takes counted parts in against a line: stock of the depot goes up by what came, the rest of the line stays open.
     *
     * @param day the day it came
     */
    public void receive(String key, OrderRef ref, double pieces, LocalDate day, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            PurchaseLine now = orders.receive(line, pieces, day);
            writer.because(new StockCause(StockCause.Kind.RECEIVED, ref.order(), "", at, by));
            new OnHandStock(writer, ref.depot()).add(ref.part(), pieces);
            OrderBooks.note(
                    connection,
                    at,
                    by,
                    "receive against an order",
                    ref.order(),
                    ref.toString(),
                    words(line),
                    words(now));
            return "received";
        });
    }

    /** Cancels what has not come of a line. What has come stays; of a transfer the rest goes back to its depot. */
    public void cancel(String key, OrderRef ref, String why, LocalDate day, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            if (why.isBlank()) {
                throw RefusedEntryException.of("why", "reason: is empty", "enter why the line is cancelled");
            }
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            writer.because(new StockCause(StockCause.Kind.TAKEN_BACK, ref.order(), Require.text("why", why), at, by));
            Transfers.takeBack(connection, writer, line);
            fewer(connection, orders, line, line.openQuantity(), day);
            OrderBooks.note(
                    connection,
                    at,
                    by,
                    "cancel an order line",
                    ref.order(),
                    ref.toString(),
                    words(line),
                    "because: " + why);
            return "cancelled";
        });
    }

    /**
     * Splits pieces that are still open off a line: they become an order of their own, such as {@code PO-00012-2}, with its
     * own day. Both together are what was ordered.
     *
     * @return the new order's number
     */
    public String split(
            String key, OrderRef ref, double pieces, LocalDate newDay, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            OpenOrders orders = new OpenOrders(writer);
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            if (PurchaseLine.isTransfer(ref.order())) {
                throw RefusedEntryException.of("pieces", "a transfer is not split", "cancel it and send two");
            }
            if (!(pieces > 0 && pieces < line.openQuantity())) {
                throw RefusedEntryException.of(
                        "pieces",
                        ref + ": " + Require.plain(pieces) + " of " + Require.plain(line.openQuantity()) + " open ones",
                        "split off more than 0 and fewer than are open, or confirm a new day for all of them");
            }
            fewer(connection, orders, line, pieces, day);
            return branch(connection, writer, line, pieces, newDay, day, at, by);
        });
    }

    /** Takes open pieces off a line; it is closed when all others have come, and gone when none was left. */
    static void fewer(Connection connection, OpenOrders orders, PurchaseLine line, double pieces, LocalDate day)
            throws SQLException {
        double left = line.quantity() - pieces;
        if (left <= 1e-9) {
            StoreSql.update(
                    connection,
                    "delete from purchase_line where purchase_order = ? and part = ? and depot = ?",
                    line.order(),
                    line.part(),
                    line.depot());
            return;
        }
        orders.keep(new PurchaseLine(
                line.order(),
                line.part(),
                line.depot(),
                left,
                line.dueOn(),
                line.received() >= left - 1e-9 ? day : null,
                line.confirmedOn(),
                Math.min(left, line.received()),
                line.price()));
    }

    /** An order of its own for pieces of a line, under the line's number and the next free suffix. */
    static String branch(
            Connection connection,
            StoreWriter writer,
            PurchaseLine line,
            double pieces,
            LocalDate newDay,
            LocalDate day,
            Instant at,
            String by)
            throws SQLException {
        Set<String> taken =
                writer.all(PurchaseLine.class).stream().map(PurchaseLine::order).collect(Collectors.toSet());
        int suffix = 2;
        while (taken.contains(line.order() + "-" + suffix)
                || OrderBooks.find(connection, line.order() + "-" + suffix).isPresent()) {
            suffix++;
        }
        String number = line.order() + "-" + suffix;
        PurchaseLine row =
                new PurchaseLine(number, line.part(), line.depot(), pieces, newDay, null, newDay, 0, line.price());
        writer.merge(PurchaseLine.class, List.of(row), true);
        String supplier = writer.all(Part.class).stream()
                .filter(part -> part.part().equals(line.part()))
                .map(Part::supplier)
                .findFirst()
                .orElse("");
        OrderBooks.placed(connection, new OrderHead(number, supplier, day, by, "", line.order(), null), at);
        OrderBooks.note(
                connection,
                at,
                by,
                "split an order line",
                line.order(),
                OrderRef.of(line).toString(),
                words(line),
                words(row));
        return number;
    }

    /** Everything about one order; without lines where there is no such order, or all of it was cancelled. */
    public OrderFile file(String order) {
        return store.inJointTransaction((connection, writer) -> new OrderFile(
                OrderBooks.find(connection, order),
                writer.all(PurchaseLine.class).stream()
                        .filter(line -> line.order().equals(order))
                        .sorted(Comparator.comparing(PurchaseLine::depot).thenComparing(PurchaseLine::part))
                        .toList(),
                OrderBooks.events(connection, order),
                Deliveries.ofOrder(connection, order)));
    }

    /** {@code KV-8140 for Aldermoor: 8, 2 received, expected 2026-03-12, 480.00 each}. */
    static String words(PurchaseLine line) {
        return line.part() + " for " + line.depot() + ": " + Require.plain(line.quantity())
                + (line.received() > 0 ? ", " + Require.plain(line.received()) + " received" : "")
                + (line.receivedOn() == null ? ", expected " + line.expectedOn() : ", closed " + line.receivedOn())
                + (line.price() == null ? "" : ", " + line.price().toPlainString() + " each");
    }
}
