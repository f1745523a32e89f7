package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.SQLException;

/** The site's own numbers: orders and transfers count together, the others each for itself. */
public enum Series {
    /** Orders to suppliers. */
    ORDER("PO", 1, "purchase_line", "purchase_order"),
    /** Transfers between depots. */
    TRANSFER("TR", 1, "purchase_line", "purchase_order"),
    /** Return notes of cores. */
    RETURN_NOTE("RN", 2, "unit_return", "document"),
    /** Claims, for failures under warranty and for deliveries. */
    CLAIM("CL", 3, "unit_return", "document"),
    /** Stocktakes. */
    STOCKTAKE("ST", 4, "stocktake", "number");

    private final String prefix;
    private final int row;
    private final String table;
    private final String column;

    Series(String prefix, int row, String table, String column) {
        this.prefix = prefix;
        this.row = row;
        this.table = table;
        this.column = column;
    }

    /** The next number, such as {@code PO-00012}; one that files brought already is left out. */
    public String next(Connection connection) throws SQLException {
        while (true) {
            long number = StoreSql.list(
                            connection,
                            "select next_number from order_series where id = ?",
                            each -> each.getLong("next_number"),
                            row)
                    .get(0);
            StoreSql.update(connection, "update order_series set next_number = ? where id = ?", number + 1, row);
            String name = "%s-%05d".formatted(prefix, number);
            boolean taken = !StoreSql.list(
                            connection, "select 1 from " + table + " where " + column + " = ?", each -> 1, name)
                    .isEmpty();
            if (!taken) {
                return name;
            }
        }
    }
}
