package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.Origin;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Rows of injectors in stock. */
public final class StockInjectorRows {
    private static final String COLUMNS = "select id, depot, part, serial, calibration_code, origin, received_at,"
            + " received_by, truck, cylinder from shelf_injector where there = 1 and ";
    private static final String ORDER = " order by part, received_at, id";

    private StockInjectorRows() {}

    /** Waits for its turn: until this transaction ends, nobody else changes stock or closes visits out. */
    public static void takeTurn(Connection connection) throws SQLException {
        StoreSql.update(connection, "update workshop_gate set turn = turn + 1 where id = 1");
    }

    static List<StockInjector> ofDepot(Connection connection, String depot) throws SQLException {
        return StoreSql.list(connection, COLUMNS + "depot = ?" + ORDER, StockInjectorRows::read, depot);
    }

    public static List<StockInjector> boundTo(Connection connection, String truck) throws SQLException {
        return StoreSql.list(connection, COLUMNS + "truck = ? order by cylinder", StockInjectorRows::read, truck);
    }

    static Optional<StockInjector> find(Connection connection, long id) throws SQLException {
        return StoreSql.list(connection, COLUMNS + "id = ?", StockInjectorRows::read, id).stream()
                .findFirst();
    }

    /** The one in any stock with a serial or a code. */
    public static Optional<StockInjector> findThere(Connection connection, String column, String value)
            throws SQLException {
        return StoreSql.list(connection, COLUMNS + column + " = ?", StockInjectorRows::read, value).stream()
                .findFirst();
    }

    private static StockInjector read(ResultSet row) throws SQLException {
        String code = row.getString("calibration_code");
        return new StockInjector(
                row.getLong("id"),
                row.getString("depot"),
                row.getString("part"),
                row.getString("serial"),
                code == null ? "" : code,
                Origin.valueOf(row.getString("origin")),
                StoreSql.moment(row, "received_at"),
                row.getString("received_by"),
                row.getString("truck"),
                row.getObject("cylinder", Integer.class));
    }

    static void insert(Connection connection, long id, GoodsIn.Unit unit, GoodsIn box, Instant at, String by)
            throws SQLException {
        StoreSql.update(
                connection,
                "insert into shelf_injector (id, depot, part, serial, calibration_code, origin, received_at,"
                        + " received_by, there) values (?, ?, ?, ?, ?, ?, ?, ?, 1)",
                id,
                box.depot(),
                box.part(),
                unit.serial(),
                unit.code().isEmpty() ? null : unit.code(),
                box.origin().name(),
                at,
                by);
    }

    static void bind(Connection connection, long id, String truck, int cylinder, Instant at, String by)
            throws SQLException {
        StoreSql.update(
                connection,
                "update shelf_injector set truck = ?, cylinder = ?, bound_at = ?, bound_by = ? where id = ? and there = 1",
                truck,
                cylinder,
                at,
                by,
                id);
    }

    public static void release(Connection connection, long id) throws SQLException {
        StoreSql.update(
                connection,
                "update shelf_injector set truck = null, cylinder = null, bound_at = null, bound_by = null where id = ?",
                id);
    }

    /** @param closeOut the close-out that fitted it, or 0 where it left otherwise */
    public static void gone(Connection connection, long id, Instant at, String by, long closeOut) throws SQLException {
        StoreSql.update(
                connection,
                "update shelf_injector set there = null, gone_at = ?, gone_by = ?, close_out = ? where id = ?",
                at,
                by,
                closeOut == 0 ? null : closeOut,
                id);
    }

    /** Puts back what a close-out took: into its kit, or free for any cylinder where another lies in that kit by now. */
    public static void putBack(Connection connection, long closeOut) throws SQLException {
        StoreSql.update(
                connection,
                "update shelf_injector set truck = null, cylinder = null, bound_at = null, bound_by = null"
                        + " where close_out = ? and exists (select 1 from shelf_injector o where o.there = 1"
                        + " and o.truck = shelf_injector.truck and o.cylinder = shelf_injector.cylinder)",
                closeOut);
        StoreSql.update(
                connection,
                "update shelf_injector set there = 1, gone_at = null, gone_by = null, close_out = null where close_out = ?",
                closeOut);
    }
}
