package dev.injectorplanner.app.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** The schema of a store: which version it has, and how it becomes the newest. */
final class Schema {
    /** Tables that a person fills first; a store in which all are empty holds nothing yet. */
    static final List<String> FIRST_FILLED = List.of("depot", "part", "engine_family", "duty_group", "person");

    /** Number of the database's lock under which one node at a time upgrades; any number, but always the same. */
    private static final long UPGRADE_LOCK = 7_315_220_140L;

    private Schema() {}

    /** Asks the schema's own history, a few ms; Flyway itself takes half a second to say the same. 0 where there is none. */
    static int version(DataSource pool) {
        try (Connection connection = pool.getConnection();
                ResultSet tables = connection
                        .getMetaData()
                        .getTables(null, null, "flyway_schema_history", new String[] {"TABLE"})) {
            if (!tables.next()) {
                return 0;
            }
            try (Statement statement = connection.createStatement();
                    ResultSet newest = statement.executeQuery("select \"version\" from \"flyway_schema_history\""
                            + " where \"success\" = true and \"version\" is not null"
                            + " order by \"installed_rank\" desc")) {
                return newest.next() ? Integer.parseInt(newest.getString(1)) : 0;
            }
        } catch (SQLException e) {
            throw new StoreException("The history of the store's schema cannot be read: " + e.getMessage(), e);
        }
    }

    /** Brings an embedded store's schema up. Its DDL commits by itself, so this is done on a copy: {@link StoreUpgrade}. */
    static void migrate(DataSource pool, int version) {
        flyway(pool, false, version).migrate();
    }

    /**
     * Brings a shared database's schema up, one node at a time: a second one waits and then finds it done. All of it goes
     * through one connection: Flyway would otherwise keep its history on a second one, and a node that is killed between
     * the two commits leaves tables that no history knows. Here a step and its line in the history are one transaction, and
     * the lock is the connection's, so it lasts until the database has undone what was under way.
     */
    static void migrateShared(DataSource pool, int newest) {
        try (Connection connection = pool.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("select pg_advisory_lock(" + UPGRADE_LOCK + ")");
            try {
                if (version(pool) < newest) {
                    flyway(new OneConnection(connection), true, newest).migrate();
                }
            } catch (FlywayException e) {
                throw new StoreException(
                        "The store's schema cannot be upgraded: " + StoreFailures.lastMessage(e)
                                + ". It is as it was after the last whole step. Fix: look at what else uses the database,"
                                + " then start again.",
                        e);
            } finally {
                statement.execute("select pg_advisory_unlock(" + UPGRADE_LOCK + ")");
            }
        } catch (SQLException e) {
            throw new StoreException("The store's schema cannot be upgraded: " + e.getMessage(), e);
        }
    }

    private static Flyway flyway(DataSource pool, boolean postgres, int version) {
        return Flyway.configure()
                .dataSource(pool)
                .locations(
                        "classpath:db/migration/common",
                        "classpath:db/migration/" + (postgres ? "postgresql" : "hsqldb"))
                .placeholders(Map.of("bytes", postgres ? "bytea" : "varbinary(1000000000)"))
                .target(Integer.toString(version))
                .load();
    }

    /** Whether nothing has been put into an embedded store yet, however much of its schema there is. */
    static boolean isUnused(DataSource pool) {
        try (Connection connection = pool.getConnection()) {
            for (String table : FIRST_FILLED) {
                if (hasRows(connection, table)) {
                    return false;
                }
            }
            return true;
        } catch (SQLException e) {
            throw new StoreException("The store's tables cannot be read: " + e.getMessage(), e);
        }
    }

    private static boolean hasRows(Connection connection, String table) throws SQLException {
        String stored = table.toUpperCase(java.util.Locale.ROOT);
        try (ResultSet tables = connection.getMetaData().getTables(null, "PUBLIC", stored, new String[] {"TABLE"})) {
            if (!tables.next()) {
                return false;
            }
        }
        try (Statement statement = connection.createStatement();
                ResultSet first = statement.executeQuery("select 1 from " + table + " limit 1")) {
            return first.next();
        }
    }
}
