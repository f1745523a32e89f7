package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a close-out ended beside the fleet's rows: the pin and the confirmation of its visit, kit places of other injectors,
 * services noted as done. It is noted row by row, so that a correction or a voiding can give it back.
 */
final class CloseOutEnded {
    private static final String PIN = "PIN";
    private static final String CONFIRMED = "CONFIRMED";
    private static final String KIT = "KIT";
    private static final String TASK = "TASK";

    private final Connection connection;
    private final long closeOut;
    private int nr;

    CloseOutEnded(Connection connection, long closeOut) {
        this.connection = connection;
        this.closeOut = closeOut;
    }

    private record Row(
            String kind,
            @Nullable String week,
            @Nullable LocalDate day,
            @Nullable Integer bay,
            @Nullable String time,
            @Nullable Long shelf,
            @Nullable Integer cylinder,
            @Nullable Instant at,
            @Nullable String by,
            String why) {
        static Row of(ResultSet row) throws SQLException {
            return new Row(
                    row.getString("kind"),
                    row.getString("week"),
                    row.getObject("on_day", LocalDate.class),
                    row.getObject("bay", Integer.class),
                    row.getString("at_time"),
                    row.getObject("stock_injector", Long.class),
                    row.getObject("cylinder", Integer.class),
                    StoreSql.instant(row, "made_at"),
                    row.getString("made_by"),
                    row.getString("why"));
        }
    }

    /**
     * Ends the confirmation of a truck's visit.
     *
     * @param only the week for which alone it ends, or null for any
     */
    void confirmation(String truck, @Nullable String only) throws SQLException {
        List<Row> there = StoreSql.list(
                connection,
                "select week, announced_at, announced_by from announced_visit where truck = ?",
                row -> new Row(
                        CONFIRMED,
                        row.getString(1),
                        null,
                        null,
                        null,
                        null,
                        null,
                        StoreSql.instant(row, "announced_at"),
                        row.getString(3),
                        ""),
                truck);
        for (Row row : there) {
            if (only == null || only.equals(row.week())) {
                keep(row);
                StoreSql.update(
                        connection, "delete from announced_visit where truck = ? and week = ?", truck, row.week());
            }
        }
    }

    /** Ends a truck's pin to the week of the visit. */
    void pin(String truck, String week) throws SQLException {
        List<Row> there = StoreSql.list(
                connection,
                "select week, pin_day, pin_bay, pin_start, made_at, made_by, why from plan_hold"
                        + " where truck = ? and slot = 'pin' and week = ?",
                row -> new Row(
                        PIN,
                        row.getString("week"),
                        row.getObject("pin_day", LocalDate.class),
                        row.getObject("pin_bay", Integer.class),
                        row.getString("pin_start"),
                        null,
                        null,
                        StoreSql.instant(row, "made_at"),
                        row.getString("made_by"),
                        row.getString("why")),
                truck,
                week);
        for (Row row : there) {
            keep(row);
        }
        StoreSql.update(connection, "delete from plan_hold where truck = ? and slot = 'pin' and week = ?", truck, week);
    }

    /** Frees an injector that was meant for a cylinder which got another. */
    void kitPlace(StockInjector meant) throws SQLException {
        keep(new Row(KIT, null, null, null, null, meant.id(), meant.cylinder(), null, null, ""));
        StockInjectorRows.release(connection, meant.id());
    }

    /** Notes that this close-out, and nothing before it, noted a service as done. */
    void task(String task) throws SQLException {
        keep(new Row(TASK, null, null, null, null, null, null, null, null, task));
    }

    private void keep(Row row) throws SQLException {
        StoreSql.update(
                connection,
                "insert into close_out_ended (close_out, nr, kind, week, on_day, bay, at_time, stock_injector, cylinder, made_at,"
                        + " made_by, why) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                closeOut,
                ++nr,
                row.kind,
                row.week,
                row.day,
                row.bay,
                row.time,
                row.shelf,
                row.cylinder,
                row.at,
                row.by,
                row.why);
    }

    /** Gives all of it back, as far as nobody has put another in its place since. */
    void giveBack(CloseOut made) throws SQLException {
        List<Row> rows = new ArrayList<>(StoreSql.list(
                connection, "select * from close_out_ended where close_out = ? order by nr", Row::of, closeOut));
        for (Row row : rows) {
            switch (row.kind) {
                case PIN -> pinAgain(made.truck(), row);
                case CONFIRMED -> confirmedAgain(made.truck(), row);
                case KIT -> kitAgain(made.truck(), row);
                default ->
                    StoreSql.update(
                            connection,
                            "delete from task_done where truck = ? and task = ? and done_on = ?",
                            made.truck(),
                            row.why,
                            made.doneOn());
            }
        }
        StoreSql.update(connection, "delete from close_out_ended where close_out = ?", closeOut);
    }

    private boolean none(String sql, @Nullable Object... values) throws SQLException {
        return StoreSql.list(connection, sql, row -> 1, values).isEmpty();
    }

    private void pinAgain(String truck, Row row) throws SQLException {
        if (none("select 1 from plan_hold where truck = ? and slot in ('pin', ?)", truck, row.week)) {
            StoreSql.update(
                    connection,
                    "insert into plan_hold (id, truck, kind, week, slot, made_at, made_by, why, pin_day, pin_bay, pin_start)"
                            + " values (?, ?, 'PIN', ?, 'pin', ?, ?, ?, ?, ?, ?)",
                    StoreSql.nextIds(connection, "plan_hold_seq")
                            - 1, // the numbers below the one given are this call's own
                    truck,
                    row.week,
                    row.at,
                    row.by,
                    row.why,
                    row.day,
                    row.bay,
                    row.time);
        }
    }

    private void confirmedAgain(String truck, Row row) throws SQLException {
        if (none("select 1 from announced_visit where truck = ?", truck)) {
            StoreSql.update(
                    connection,
                    "insert into announced_visit (truck, week, announced_at, announced_by) values (?, ?, ?, ?)",
                    truck,
                    row.week,
                    row.at,
                    row.by);
        }
    }

    private void kitAgain(String truck, Row row) throws SQLException {
        StoreSql.update(
                connection,
                "update shelf_injector set truck = ?, cylinder = ? where id = ? and there = 1 and truck is null and not"
                        + " exists (select 1 from shelf_injector o where o.there = 1 and o.truck = ? and o.cylinder = ?)",
                truck,
                row.cylinder,
                row.shelf,
                truck,
                row.cylinder);
    }
}
