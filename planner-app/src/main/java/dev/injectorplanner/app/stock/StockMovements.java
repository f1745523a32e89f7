package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** The movements of stock, read. They are written with each change of a stock line, whatever made it. */
public final class StockMovements {
    private final StoreSql sql;

    public StockMovements(Store store) {
        this.sql = new StoreSql(store.dataSource());
    }

    /** Movements of a part at a depot, the newest first. */
    public List<StockMovement> list(String depot, String part, int most) {
        return sql.list(
                "select * from stock_movement where depot = ? and part = ? order by id desc" + " fetch first " + most
                        + " rows only",
                StockMovements::read,
                depot,
                part);
    }

    private static StockMovement read(ResultSet row) throws SQLException {
        return new StockMovement(
                row.getLong("id"),
                row.getString("depot"),
                row.getString("part"),
                row.getDouble("pieces"),
                row.getDouble("on_hand"),
                new StockCause(
                        StockCause.Kind.valueOf(row.getString("kind")),
                        row.getString("document"),
                        row.getString("why"),
                        StoreSql.moment(row, "moved_at"),
                        row.getString("moved_by")));
    }
}
