package dev.injectorplanner.app.order;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.order.DeliveryProblem.Answer;
import dev.injectorplanner.app.order.DeliveryProblem.Kind;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.stock.FormKeys;
import dev.injectorplanner.app.stock.OpenOrders;
import dev.injectorplanner.app.stock.SerialisedStock;
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
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Deliveries that were short, wrong or damaged: each becomes a line with a new day, or a claim that is sent and answered. */
public final class Deliveries {
    private final Store store;

    public Deliveries(Store store) {
        this.store = store;
    }

    /**
     * What was found wrong.
     *
     * @param ref the order line
     * @param pieces how many
     * @param words what is wrong with them, not empty
     * @param answer sent again, or claimed
     * @param newDay the day they are to come, for {@link Answer#REPLACE}; else null
     * @param inStock whether they were received already and leave the stock again
     * @param serials serials of injectors that leave the stock
     */
    public record Found(
            OrderRef ref,
            Kind kind,
            double pieces,
            String words,
            Answer answer,
            @Nullable LocalDate newDay,
            boolean inStock,
            List<String> serials) {
        public Found {
            serials = List.copyOf(serials);
        }
    }

    /**
     * Records it.
     *
     * @return its number
     * @throws RefusedEntryException where fewer are open, or in stock, or a field is missing
     */
    public String record(String key, Found found, LocalDate day, Instant at, String by) {
        return FormKeys.once(store, key, at, by, (connection, writer) -> {
            check(found);
            LocalDate again = found.newDay();
            String number = Series.CLAIM.next(connection);
            PurchaseLine line = lineOf(found, connection, writer, number, at, by);
            BigDecimal amount = BigDecimal.ZERO;
            String newLine = null;
            if (found.answer() == Answer.REPLACE && again != null) {
                newLine = sentAgain(found, line, again, connection, writer, at, by, day);
            } else {
                amount = worth(writer, line).multiply(BigDecimal.valueOf(found.pieces()));
                if (!found.inStock()) {
                    PurchaseOrders.fewer(connection, new OpenOrders(writer), line, found.pieces(), day);
                }
            }
            insert(connection, number, found, amount, newLine, day, by);
            OrderBooks.note(
                    connection,
                    at,
                    by,
                    "record a delivery problem",
                    found.ref().order(),
                    number + ", " + found.ref(),
                    "",
                    Require.plain(found.pieces()) + " " + found.kind().words() + ": " + found.words()
                            + (newLine == null
                                    ? "; claimed " + amount.stripTrailingZeros().toPlainString()
                                    : "; replacement due with " + newLine + " on " + again));
            return number;
        });
    }

    private static PurchaseLine lineOf(
            Found found, Connection connection, StoreWriter writer, String number, Instant at, String by)
            throws SQLException {
        OrderRef ref = found.ref();
        OpenOrders orders = new OpenOrders(writer);
        if (!found.inStock()) {
            PurchaseLine line = orders.line(ref.order(), ref.part(), ref.depot());
            OpenOrders.requireOpen(line, found.pieces(), "are wrong");
            return line;
        }
        if (found.kind() == Kind.SHORT) {
            throw RefusedEntryException.of(
                    "kind", "pieces in stock cannot be short", "choose wrong or damaged, or record what did not come");
        }
        PurchaseLine line = orders.anyLine(ref.order(), ref.part(), ref.depot());
        double came = line.receivedOn() == null ? line.received() : line.quantity();
        if (found.pieces() > came + 1e-9) {
            throw RefusedEntryException.of(
                    "pieces",
                    ref + ": " + Require.plain(found.pieces()) + " are wrong, " + Require.plain(came) + " came",
                    "enter no more than came with this order");
        }
        writer.because(new StockCause(StockCause.Kind.RETURNED, number + ", " + ref.order(), found.words(), at, by));
        SerialisedStock.sendBack(connection, writer, ref.depot(), ref.part(), found.pieces(), found.serials(), at, by);
        return line;
    }

    private static void check(Found found) {
        if (found.words().isBlank()) {
            throw RefusedEntryException.of("words", "what is wrong: is empty", "enter what you saw");
        }
        Require.text("words", found.words());
        Require.positive("pieces", found.pieces());
        if (PurchaseLine.isTransfer(found.ref().order())) {
            throw RefusedEntryException.of(
                    "kind",
                    "a transfer has no supplier",
                    "cancel what did not come, or correct the stock by a stocktake");
        }
        if (found.answer() == Answer.REPLACE && found.newDay() == null) {
            throw RefusedEntryException.of("new_day", "replacement due: is empty", "enter the day, or choose to claim");
        }
    }

    /** The order that brings the pieces: the line itself where all that is open comes later, else one split from it. */
    private static String sentAgain(
            Found found,
            PurchaseLine line,
            LocalDate again,
            Connection connection,
            StoreWriter writer,
            Instant at,
            String by,
            LocalDate day)
            throws SQLException {
        if (!found.inStock() && found.pieces() >= line.openQuantity() - 1e-9) {
            new OpenOrders(writer)
                    .keep(new PurchaseLine(
                            line.order(),
                            line.part(),
                            line.depot(),
                            line.quantity(),
                            line.dueOn(),
                            null,
                            again,
                            line.received(),
                            line.price()));
            return line.order();
        }
        if (!found.inStock()) {
            PurchaseOrders.fewer(connection, new OpenOrders(writer), line, found.pieces(), day);
        }
        return PurchaseOrders.branch(connection, writer, line, found.pieces(), again, day, at, by);
    }

    private static BigDecimal worth(StoreWriter writer, PurchaseLine line) {
        Part part = writer.all(Part.class).stream()
                .filter(each -> each.part().equals(line.part()))
                .findFirst()
                .orElseThrow();
        BigDecimal price = line.price();
        return (price == null ? part.price() : price).add(part.coreDeposit());
    }

    private static void insert(
            Connection connection,
            String number,
            Found found,
            BigDecimal amount,
            @Nullable String newLine,
            LocalDate day,
            String by)
            throws SQLException {
        String serials = found.serials().isEmpty() ? "" : " (serial " + String.join(", ", found.serials()) + ")";
        StoreSql.update(
                connection,
                "insert into delivery_problem (number, order_number, part, depot, kind, pieces, words, amount, noted_on,"
                        + " noted_by, new_line, reason) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, '')",
                number,
                found.ref().order(),
                found.ref().part(),
                found.ref().depot(),
                found.kind().name(),
                found.pieces(),
                Require.text("words", found.words().strip() + serials),
                amount,
                day,
                by,
                newLine);
    }

    /** The claim goes to the supplier. */
    public void send(String key, String number, LocalDate day, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            DeliveryProblem there = open(connection, number);
            StoreSql.update(
                    connection,
                    "update delivery_problem set sent_on = ?, sent_by = ? where number = ?",
                    day,
                    by,
                    number);
            AuditTrail.write(connection, at, by, "send a claim", number + ", " + there.ref(), there.state(), "sent");
            return number;
        });
    }

    /**
     * The supplier's answer.
     *
     * @param credit what it credits, 0 where it refuses
     * @param reason why, not empty where it refuses
     */
    public void settle(
            String key, String number, LocalDate day, BigDecimal credit, String reason, Instant at, String by) {
        FormKeys.once(store, key, at, by, (connection, writer) -> {
            DeliveryProblem there = open(connection, number);
            BigDecimal amount = Require.money("credit", credit);
            if (amount.signum() == 0 && reason.isBlank()) {
                throw RefusedEntryException.of("reason", "reason: is empty", "enter why the supplier refused");
            }
            StoreSql.update(
                    connection,
                    "update delivery_problem set settled_on = ?, settled_by = ?, credit = ?, reason = ? where number = ?",
                    day,
                    by,
                    amount,
                    Require.text("reason", reason),
                    number);
            AuditTrail.write(
                    connection,
                    at,
                    by,
                    amount.signum() == 0 ? "note that it was refused" : "note a credit",
                    number + ", " + there.ref(),
                    there.state(),
                    amount.toPlainString() + (reason.isBlank() ? "" : ", " + Require.text("reason", reason)));
            return number;
        });
    }

    private static DeliveryProblem open(Connection connection, String number) throws SQLException {
        DeliveryProblem there =
                StoreSql.list(connection, "select * from delivery_problem where number = ?", Deliveries::read, number)
                        .stream()
                        .findFirst()
                        .orElseThrow(() -> RefusedEntryException.of(
                                "claim", "there is no claim " + number, "open the claims again and choose one"));
        if (there.newLine() != null || there.credit() != null) {
            throw RefusedEntryException.of(
                    "claim", "claim " + number + ": is " + there.state(), "open the claims again and choose another");
        }
        return there;
    }

    /** All of them, the newest first. */
    public List<DeliveryProblem> list() {
        return new StoreSql(store.dataSource())
                .list("select * from delivery_problem order by noted_on desc, number desc", Deliveries::read);
    }

    static List<DeliveryProblem> ofOrder(Connection connection, String order) throws SQLException {
        return StoreSql.list(
                connection,
                "select * from delivery_problem where order_number = ? order by number",
                Deliveries::read,
                order);
    }

    private static DeliveryProblem read(ResultSet row) throws SQLException {
        return new DeliveryProblem(
                row.getString("number"),
                new OrderRef(row.getString("order_number"), row.getString("part"), row.getString("depot")),
                Kind.valueOf(row.getString("kind")),
                row.getDouble("pieces"),
                row.getString("words"),
                row.getBigDecimal("amount"),
                row.getObject("noted_on", LocalDate.class),
                row.getString("noted_by"),
                row.getString("new_line"),
                row.getObject("sent_on", LocalDate.class),
                row.getString("sent_by"),
                row.getObject("settled_on", LocalDate.class),
                row.getString("settled_by"),
                row.getBigDecimal("credit"),
                row.getString("reason"));
    }
}
