package dev.injectorplanner.app.jobs;

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

/** Plain statements on the store's pool, alike on both databases. */
public final class Sql {
    private static final int MOST_TRIES = 5;

    private final DataSource pool;

    public Sql(DataSource pool) {
        this.pool = pool;
    }

    /** Work on one connection. */
    @FunctionalInterface
    public interface Work<R> {
        R on(Connection connection) throws SQLException;
    }

    /** Reads a row. */
    @FunctionalInterface
    public interface RowReader<R> {
        R read(ResultSet row) throws SQLException;
    }

    /** One transaction, tried again where the database asks for it. */
    public <R> R transaction(Work<R> work) {
        for (int tried = 1; ; tried++) {
            try (Connection connection = pool.getConnection()) {
                connection.setAutoCommit(false);
                return committed(connection, work);
            } catch (SQLException e) {
                if (!isClash(e) || tried == MOST_TRIES) {
                    throw new JobStoreException("The store refused what a job asked of it: " + e.getMessage(), e);
                }
            }
        }
    }

    private static <R> R committed(Connection connection, Work<R> work) throws SQLException {
        boolean done = false;
        try {
            R result = work.on(connection);
            connection.commit();
            done = true;
            return result;
        } finally {
            if (!done) {
                connection.rollback();
            }
            connection.setAutoCommit(true);
        }
    }

    private static boolean isClash(SQLException e) {
        String state = String.valueOf(e.getSQLState());
        return e instanceof SQLTransactionRollbackException || state.startsWith("40");
    }

    static boolean isDouble(SQLException e) {
        return e instanceof SQLIntegrityConstraintViolationException
                || String.valueOf(e.getSQLState()).startsWith("23");
    }

    public <R> List<R> list(String query, RowReader<R> reader, @Nullable Object... values) {
        return transaction(connection -> list(connection, query, reader, values));
    }

    public static <R> List<R> list(Connection connection, String query, RowReader<R> reader, @Nullable Object... values)
            throws SQLException {
        try (PreparedStatement statement = prepared(connection, query, values);
                ResultSet rows = statement.executeQuery()) {
            List<R> found = new ArrayList<>();
            while (rows.next()) {
                found.add(reader.read(rows));
            }
            return found;
        }
    }

    /** Answers how many rows it changed. */
    public static int update(Connection connection, String command, @Nullable Object... values) throws SQLException {
        try (PreparedStatement statement = prepared(connection, command, values)) {
            return statement.executeUpdate();
        }
    }

    private static PreparedStatement prepared(Connection connection, String text, @Nullable Object... values)
            throws SQLException {
        PreparedStatement statement = connection.prepareStatement(text);
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            statement.setObject(i + 1, value instanceof Instant at ? at.atOffset(ZoneOffset.UTC) : value);
        }
        return statement;
    }

    static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    static @Nullable Instant optionalInstant(ResultSet row, String column) throws SQLException {
        OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
        return at == null ? null : at.toInstant();
    }
}
