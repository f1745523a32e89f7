package dev.injectorplanner.app.order;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Heads of orders, and what happened to them, within a transaction. */
final class OrderBooks {
    private OrderBooks() {}

    static void placed(Connection connection, OrderHead head, Instant at) throws SQLException {
        StoreSql.update(
                connection,
                "insert into order_document (order_number, supplier, placed_on, placed_at, placed_by, note, split_from)"
                        + " values (?, ?, ?, ?, ?, ?, ?)",
                head.order(),
                head.supplier(),
                head.placedOn(),
                at,
                head.placedBy(),
                head.note(),
                head.splitFrom());
    }

    static Optional<OrderHead> find(Connection connection, String order) throws SQLException {
        return StoreSql.list(
                        connection,
                        "select * from order_document where order_number = ?",
                        row -> new OrderHead(
                                row.getString("order_number"),
                                row.getString("supplier"),
                                row.getObject("placed_on", LocalDate.class),
                                row.getString("placed_by"),
                                row.getString("note"),
                                row.getString("split_from"),
                                row.getString("mailed_to")),
                        order)
                .stream()
                .findFirst();
    }

    static List<OrderEvent> events(Connection connection, String order) throws SQLException {
        return StoreSql.list(
                connection,
                "select what, words, done_at, done_by from order_event where order_number = ? order by id",
                row -> new OrderEvent(
                        row.getString("what"),
                        row.getString("words"),
                        StoreSql.moment(row, "done_at"),
                        row.getString("done_by")),
                order);
    }

    /** Notes what happened, for the order's page and for the audit trail. */
    static void note(
            Connection connection,
            Instant at,
            String by,
            String what,
            String order,
            String subject,
            String before,
            String after)
            throws SQLException {
        AuditTrail.write(connection, at, by, what, subject, before, after);
        StoreSql.update(
                connection,
                "insert into order_event (id, order_number, what, words, done_at, done_by) values (?, ?, ?, ?, ?, ?)",
                StoreSql.nextIds(connection, "order_event_seq"),
                order,
                what,
                shortened(before.isEmpty() ? after : "from " + before + " to " + after),
                at,
                by);
    }

    private static String shortened(String words) {
        int most = 4_000;
        return words.length() <= most ? words : words.substring(0, most - 1) + "…";
    }

    static void mailed(Connection connection, String order, @Nullable String address) throws SQLException {
        StoreSql.update(connection, "update order_document set mailed_to = ? where order_number = ?", address, order);
    }
}
