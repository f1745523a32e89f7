package dev.injectorplanner.app.order;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What buyers have done, by the key of its form, and the numbers of the site's own orders. */
final class OrderActions {
    private static final int LONGEST_KEY = 100;

    private final Connection connection;

    OrderActions(Connection connection) {
        this.connection = connection;
    }

    /** Waits for its turn among all that move stock; ends with the transaction. */
    void takeTurn() throws SQLException {
        StockInjectorRows.takeTurn(connection);
    }

    /** The answer that a form got before, if any. */
    Optional<String> findDone(String key) throws SQLException {
        if (key.isBlank() || key.length() > LONGEST_KEY) {
            throw RefusedEntryException.of("formKey", "the form's key is missing or damaged", "open the page again");
        }
        List<String> there = StoreSql.list(
                connection, "select result from order_action where form_key = ?", row -> row.getString("result"), key);
        return there.stream().findFirst();
    }

    void done(String key, String result, Instant at, String by) throws SQLException {
        StoreSql.update(
                connection,
                "insert into order_action (form_key, result, done_at, done_by) values (?, ?, ?, ?)",
                key,
                result,
                at,
                by);
    }

    /** The next number of the site's own series, such as {@code PO-00012}; one that files brought already is left out. */
    String nextNumber(String prefix) throws SQLException {
        while (true) {
            long number = StoreSql.list(
                            connection,
                            "select next_number from order_series where id = 1",
                            row -> row.getLong("next_number"))
                    .get(0);
            StoreSql.update(connection, "update order_series set next_number = ? where id = 1", number + 1);
            String name = "%s-%05d".formatted(prefix, number);
            boolean taken = !StoreSql.list(
                            connection, "select 1 from purchase_line where purchase_order = ?", row -> 1, name)
                    .isEmpty();
            if (!taken) {
                return name;
            }
        }
    }
}
