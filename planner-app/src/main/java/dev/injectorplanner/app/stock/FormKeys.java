package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;

/**
 * Changes by buyers and storemen, each under the key of its form or request: sent twice it is done once. They take turns at
 * one row with all that move stock, so two of them at once lose nothing.
 */
public final class FormKeys {
    private static final int LONGEST_KEY = 100;

    private FormKeys() {}

    /** A change within its transaction; what it returns is kept as the form's answer. */
    public interface Change {
        String make(Connection connection, StoreWriter writer) throws SQLException;
    }

    /**
     * Makes a change, whole or not at all; or answers what its form was answered before.
     *
     * @param key names the form
     * @throws RefusedEntryException where the key is damaged, or the change refuses
     */
    public static String once(Store store, String key, Instant at, String by, Change change) {
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            if (key.isBlank() || key.length() > LONGEST_KEY) {
                throw RefusedEntryException.of(
                        "formKey", "the form's key is missing or damaged", "open the page again");
            }
            List<String> there = StoreSql.list(
                    connection,
                    "select result from order_action where form_key = ?",
                    row -> row.getString("result"),
                    key);
            if (!there.isEmpty()) {
                return there.get(0);
            }
            String result = change.make(connection, writer);
            StoreSql.update(
                    connection,
                    "insert into order_action (form_key, result, done_at, done_by) values (?, ?, ?, ?)",
                    key,
                    result,
                    at,
                    by);
            return result;
        });
    }
}
