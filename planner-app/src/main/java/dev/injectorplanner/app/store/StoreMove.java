package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.TableCopy.Sum;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Copies a whole store to another database: every table in one transaction, referenced ones first, each then counted and
 * summed on both sides; the numbers that sequences give out next go along. What the program writes for itself when it
 * runs, such as which node has which trigger, is left to be written anew.
 */
public final class StoreMove {
    /** State of running nodes, and the schema's own history. */
    private static final Set<String> LEFT_BEHIND = Set.of(
            "flyway_schema_history",
            "qrtz_fired_triggers",
            "qrtz_scheduler_state",
            "qrtz_locks",
            "page_session",
            "page_session_attributes",
            "sign_in_tries");

    private StoreMove() {}

    /**
     * Copies it.
     *
     * @param from a store that nobody else uses meanwhile
     * @param to a store without people, trucks or parts
     * @return rows by table
     * @throws StoreException where the target is in use, or what arrived is not what was sent; the target is then as it was
     */
    public static Map<String, Long> copy(Store from, Store to) {
        try (Connection source = from.dataSource().getConnection();
                Connection target = to.dataSource().getConnection()) {
            target.setAutoCommit(false);
            try {
                Map<String, Long> rows = copied(source, target);
                sequences(source, target);
                target.commit();
                return rows;
            } catch (SQLException | RuntimeException e) {
                target.rollback();
                throw e;
            }
        } catch (SQLException e) {
            throw StoreFailures.inWords("The store cannot be moved", e);
        }
    }

    private static Map<String, Long> copied(Connection source, Connection target) throws SQLException {
        List<String> tables = inOrder(source);
        requireUnused(target);
        for (int i = tables.size() - 1; i >= 0; i--) {
            try (Statement statement = target.createStatement()) {
                statement.execute("delete from " + tables.get(i)); // what the schema itself put in
            }
        }
        Map<String, Long> rows = new LinkedHashMap<>();
        for (String table : tables) {
            Sum sent = TableCopy.copy(source, target, table);
            Sum arrived = TableCopy.sum(target, table);
            if (!sent.equals(arrived)) {
                throw new SQLException("table " + table + " arrived with " + arrived + " instead of " + sent);
            }
            rows.put(table, sent.rows());
        }
        return rows;
    }

    private static void requireUnused(Connection target) throws SQLException {
        for (String table : Schema.FIRST_FILLED) {
            try (Statement statement = target.createStatement();
                    ResultSet first = statement.executeQuery("select 1 from " + table + " limit 1")) {
                if (first.next()) {
                    throw new StoreException(
                            "The target already holds a store: its table " + table
                                    + " has rows. Fix: name an empty database with --to.",
                            new SQLException("not empty"));
                }
            }
        }
    }

    /** All tables, each after those that it refers to. */
    private static List<String> inOrder(Connection source) throws SQLException {
        DatabaseMetaData meta = source.getMetaData();
        Map<String, Set<String>> refers = new TreeMap<>();
        for (String stored : tables(meta)) {
            Set<String> others = new TreeSet<>();
            try (ResultSet keys = meta.getImportedKeys(null, null, stored)) {
                while (keys.next()) {
                    others.add(lower(keys.getString("PKTABLE_NAME")));
                }
            }
            others.remove(lower(stored));
            refers.put(lower(stored), others);
        }
        List<String> order = new ArrayList<>();
        while (!refers.isEmpty()) {
            List<String> free = refers.entrySet().stream()
                    .filter(each -> order.containsAll(each.getValue()))
                    .map(Map.Entry::getKey)
                    .toList();
            if (free.isEmpty()) {
                throw new SQLException("tables refer to each other in a circle: " + refers.keySet());
            }
            order.addAll(free);
            free.forEach(refers::remove);
        }
        return order;
    }

    private static List<String> tables(DatabaseMetaData meta) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet rows = meta.getTables(null, null, "%", new String[] {"TABLE"})) {
            while (rows.next()) {
                String schema = lower(rows.getString("TABLE_SCHEM"));
                String table = rows.getString("TABLE_NAME");
                if (schema.equals("public") && !LEFT_BEHIND.contains(lower(table))) {
                    tables.add(table);
                }
            }
        }
        return tables;
    }

    private static void sequences(Connection source, Connection target) throws SQLException {
        boolean postgres = source.getMetaData().getDatabaseProductName().equals("PostgreSQL");
        String all = postgres
                ? "select sequencename, coalesce(last_value + increment_by, start_value) from pg_sequences"
                        + " where schemaname = 'public'"
                : "select sequence_name, cast(next_value as bigint) from information_schema.sequences"
                        + " where sequence_schema = 'PUBLIC'";
        try (Statement asked = source.createStatement();
                ResultSet rows = asked.executeQuery(all);
                Statement told = target.createStatement()) {
            while (rows.next()) {
                told.execute("alter sequence " + lower(rows.getString(1)) + " restart with " + rows.getLong(2));
            }
        }
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
