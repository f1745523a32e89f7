package dev.injectorplanner.app.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.SQLIntegrityConstraintViolationException;
import java.sql.SQLTransactionRollbackException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Plain SQL for the tables that are not the fleet's: each piece of work is one transaction, whole or not at all. The same
 * statements run on both databases.
 */
public final class StoreSql {
    /** Numbers that one call of {@link #nextIds} hands out; the sequences step by it. */
    public static final int IDS = 1_000;

    private static final int MOST_TRIES = 5;

    private final DataSource source;

    public StoreSql(DataSource source) {
        this.source = source;
    }

    /** Work within one transaction. */
    public interface Work<T extends @Nullable Object> {
        T in(Connection connection) throws SQLException;
    }

    /** One row of an answer. */
    public interface RowReader<T> {
        T read(ResultSet row) throws SQLException;
    }

    /** Runs work in a transaction: committed when it ends, undone when it throws. */
    public <T extends @Nullable Object> T inTransaction(Work<T> work) {
        try (Connection connection = source.getConnection()) {
            connection.setAutoCommit(false); // the pool turns it on again
            try {
                T result = work.in(connection);
                StorePools.requireRoom(source);
                connection.commit();
                StorePools.committed(source);
                return result;
            } catch (Throwable failure) { // an error too: what it left must not be committed by the next
                undo(connection, failure);
                throw failure;
            }
        } catch (SQLException e) {
            throw new StoreException("The store reported an error: " + e.getMessage(), e);
        }
    }

    /** A connection that broke cannot be rolled back; what is told is why it broke. */
    private static void undo(Connection connection, Throwable failure) {
        try {
            connection.rollback();
        } catch (SQLException e) {
            failure.addSuppressed(e);
        }
    }

    /**
     * The same, tried again where the database could not serve two at once.
     *
     * @param work changes nothing but the store, since it may run more than once
     */
    public <T extends @Nullable Object> T retried(Work<T> work) {
        for (int tried = 1; ; tried++) {
            try {
                return inTransaction(work);
            } catch (StoreException e) {
                if (tried == MOST_TRIES || !(e.getCause() instanceof SQLException clash) || !isClash(clash)) {
                    throw e;
                }
            }
        }
    }

    private static boolean isClash(SQLException e) {
        return e instanceof SQLTransactionRollbackException
                || String.valueOf(e.getSQLState()).startsWith("40");
    }

    /** Whether a row was refused since its key is there already. */
    public static boolean isDouble(SQLException e) {
        return e instanceof SQLIntegrityConstraintViolationException
                || String.valueOf(e.getSQLState()).startsWith("23");
    }

    /** Whether somebody else's transaction came first: what was undone can be done again on what is there now. */
    public static boolean isOtherFaster(StoreException e) {
        return e.getCause() instanceof SQLException cause && (isClash(cause) || isDouble(cause));
    }

    /** Rows in a transaction of their own. */
    public <T> List<T> list(String sql, RowReader<T> reader, @Nullable Object... values) {
        return retried(connection -> list(connection, sql, reader, values));
    }

    public static <T> List<T> list(Connection connection, String sql, RowReader<T> reader, @Nullable Object... values)
            throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            fill(statement, values);
            List<T> rows = new ArrayList<>();
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    rows.add(reader.read(row));
                }
            }
            return rows;
        }
    }

    /** How many rows it changed. */
    public static int update(Connection connection, String sql, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            fill(statement, values);
            return statement.executeUpdate();
        }
    }

    /** The first of {@value #IDS} numbers that nobody else gets. */
    public static long nextIds(Connection connection, String sequence) throws SQLException {
        boolean postgres = connection.getMetaData().getDatabaseProductName().startsWith("Postgre");
        return list(
                        connection,
                        postgres ? "select nextval('" + sequence + "')" : "call next value for " + sequence,
                        row -> row.getLong(1))
                .get(0);
    }

    /** Puts values in place; moments go as UTC. */
    public static void fill(PreparedStatement statement, @Nullable Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            statement.setObject(i + 1, value instanceof Instant moment ? moment.atOffset(ZoneOffset.UTC) : value);
        }
    }

    public static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    /** A moment of a column that is never empty. */
    public static Instant moment(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
