package dev.injectorplanner.app.alert;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Alerts as rows of the store. */
final class AlertRows {
    private static final String UPDATE =
            "update alert set depot = ?, state = ?, action = ?, evidence = ?, limit_words = ?, limit_source = ?,"
                    + " due_on = ?, visit_week = ?, seen_at = ?, muted_until = ?, muted_why = ?, cleared_at = ?,"
                    + " cleared_why = ?, told = ?, open_key = ? where id = ? and state = ?"
                    + " and told is not distinct from cast(? as varchar(10))"
                    + " and seen_at is not distinct from cast(? as timestamp(6) with time zone)"
                    + " and muted_until is not distinct from cast(? as date)";

    private static final String COLUMNS = "id, depot, truck, cylinder, rule, subject, state, action, evidence,"
            + " limit_words, limit_source, due_on, visit_week, raised_at, seen_at, muted_until, muted_why, cleared_at,"
            + " cleared_why, told";

    private AlertRows() {}

    /** An alert's step to another state, for its history. */
    record Event(
            long alert, Instant at, String who, @Nullable AlertState from, AlertState to, String why) {}

    static List<Alert> list(Connection connection, String rest, @Nullable Object... values) throws SQLException {
        return StoreSql.list(connection, "select " + COLUMNS + " from alert " + rest, AlertRows::read, values);
    }

    /** Alerts by their numbers, ascending. */
    static List<Alert> listById(Connection connection, List<Long> ids) throws SQLException {
        return list(
                connection,
                "where id in (" + String.join(",", Collections.nCopies(ids.size(), "?")) + ") order by id",
                ids.toArray());
    }

    /**
     * Alerts of some trucks that are open elsewhere, or were cleared not long ago. Truck by truck: one database reads its
     * whole table for a list of them.
     */
    static List<Alert> listEarlier(Connection connection, Collection<String> trucks, Instant clearedSince)
            throws SQLException {
        List<Alert> all = new ArrayList<>();
        for (String truck : trucks) {
            all.addAll(list(
                    connection,
                    "where truck_key = ? and (open_key = 0 or cleared_at > ?) order by id",
                    truck,
                    clearedSince));
        }
        return all;
    }

    static void insert(Connection connection, List<Alert> alerts) throws SQLException {
        if (alerts.isEmpty()) {
            return;
        }
        String sql = "insert into alert (" + COLUMNS + ", truck_key, cylinder_key, subject_key, open_key) values ("
                + String.join(",", Collections.nCopies(24, "?")) + ")";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (Alert alert : alerts) {
                AlertKey key = AlertKey.of(alert);
                StoreSql.fill(
                        statement,
                        alert.id(),
                        alert.depot(),
                        alert.truck(),
                        alert.cylinder(),
                        alert.rule(),
                        alert.subject(),
                        alert.state().name(),
                        alert.action(),
                        alert.evidence(),
                        alert.limit(),
                        alert.limitSource(),
                        alert.by(),
                        text(alert.visitWeek()),
                        alert.raisedAt(),
                        alert.seenAt(),
                        alert.mutedUntil(),
                        alert.mutedWhy(),
                        alert.clearedAt(),
                        alert.clearedWhy(),
                        name(alert.told()),
                        key.truck(),
                        key.cylinder(),
                        key.subject(),
                        openKey(alert));
                statement.addBatch();
            }
            statement.executeBatch();
        }
    }

    /**
     * Stores alerts again, each only where it still stands as it was read: what a person did meanwhile is kept.
     *
     * @param before the same alerts as they were read
     * @return which of them were stored
     */
    static boolean[] update(Connection connection, List<Alert> alerts, List<Alert> before) throws SQLException {
        boolean[] stored = new boolean[alerts.size()];
        if (alerts.isEmpty()) {
            return stored;
        }
        try (PreparedStatement statement = connection.prepareStatement(UPDATE)) {
            for (int i = 0; i < alerts.size(); i++) {
                Alert alert = alerts.get(i);
                Alert was = before.get(i);
                StoreSql.fill(
                        statement,
                        alert.depot(),
                        alert.state().name(),
                        alert.action(),
                        alert.evidence(),
                        alert.limit(),
                        alert.limitSource(),
                        alert.by(),
                        text(alert.visitWeek()),
                        alert.seenAt(),
                        alert.mutedUntil(),
                        alert.mutedWhy(),
                        alert.clearedAt(),
                        alert.clearedWhy(),
                        name(alert.told()),
                        openKey(alert),
                        alert.id(),
                        was.state().name(),
                        name(was.told()),
                        was.seenAt(),
                        was.mutedUntil());
                statement.addBatch();
            }
            int[] counts = statement.executeBatch();
            for (int i = 0; i < counts.length; i++) {
                stored[i] = counts[i] != 0;
            }
            return stored;
        }
    }

    static void insertEvents(Connection connection, List<Event> events) throws SQLException {
        if (events.isEmpty()) {
            return;
        }
        try (PreparedStatement statement = connection.prepareStatement(
                "insert into alert_event (id, alert, happened_at, who, from_state, to_state, why)"
                        + " values (?, ?, ?, ?, ?, ?, ?)")) {
            long id = 0;
            for (int i = 0; i < events.size(); i++) {
                id = i % StoreSql.IDS == 0 ? StoreSql.nextIds(connection, "alert_event_seq") : id + 1;
                Event event = events.get(i);
                StoreSql.fill(
                        statement,
                        id,
                        event.alert(),
                        event.at(),
                        event.who(),
                        name(event.from()),
                        event.to().name(),
                        event.why());
                statement.addBatch();
            }
            statement.executeBatch();
        }
    }

    private static long openKey(Alert alert) {
        return alert.state() == AlertState.CLEARED ? alert.id() : 0;
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }

    private static @Nullable String name(@Nullable AlertState state) {
        return state == null ? null : state.name();
    }

    private static Alert read(ResultSet row) throws SQLException {
        String week = row.getString("visit_week");
        String told = row.getString("told");
        int cylinder = row.getInt("cylinder");
        boolean wholeTruck = row.wasNull();
        return new Alert(
                row.getLong("id"),
                row.getString("depot"),
                row.getString("truck"),
                wholeTruck ? null : Integer.valueOf(cylinder),
                row.getString("rule"),
                row.getString("subject"),
                AlertState.valueOf(row.getString("state")),
                row.getString("action"),
                row.getString("evidence"),
                row.getString("limit_words"),
                row.getString("limit_source"),
                row.getObject("due_on", LocalDate.class),
                week == null ? null : IsoWeek.parse(week),
                StoreSql.moment(row, "raised_at"),
                StoreSql.instant(row, "seen_at"),
                row.getObject("muted_until", LocalDate.class),
                row.getString("muted_why"),
                StoreSql.instant(row, "cleared_at"),
                row.getString("cleared_why"),
                told == null ? null : AlertState.valueOf(told));
    }
}
