package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * The store's connections: one pool for whatever changes something, and one for reading pages, which therefore never wait
 * for a load or for somebody's turn.
 */
final class StorePools implements DataSource, AutoCloseable {
    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final @Nullable DiskRoom room;
    private final @Nullable InUse held;
    private final boolean shared;
    private final AtomicLong changes = new AtomicLong();
    private final AtomicLong commits = new AtomicLong();

    /** @param held that this process has an embedded store, given up once its connections are closed */
    StorePools(StoreSettings settings, HikariDataSource writing, HikariDataSource reading, @Nullable InUse held) {
        this.held = held;
        this.writing = writing;
        this.reading = reading;
        this.shared = settings.isPostgres();
        this.room = settings.isEmbedded()
                ? new DiskRoom(Objects.requireNonNull(Path.of(settings.place()).getParent()))
                : null;
    }

    /**
     * Asked before anything is committed.
     *
     * @throws StoreException where the disk is full, so that nothing is acknowledged that might not be kept
     */
    static void requireRoom(DataSource source) {
        if (source instanceof StorePools pools && pools.room != null && !StoreLane.isReading()) {
            pools.room.require();
        }
    }

    /** The fleet's rows were changed. */
    void changed() {
        changes.incrementAndGet();
    }

    long changes() {
        return changes.get();
    }

    /** Something was committed; what a page's reader ends has changed nothing. */
    static void committed(DataSource source) {
        if (source instanceof StorePools pools && !StoreLane.isReading()) {
            pools.commits.incrementAndGet();
        }
    }

    /** How often this process has committed something. */
    long commits() {
        return commits.get();
    }

    boolean isShared() {
        return shared;
    }

    @Override
    public Connection getConnection() throws SQLException {
        return (StoreLane.isReading() ? reading : writing).getConnection();
    }

    @Override
    public Connection getConnection(String user, String password) throws SQLException {
        throw new SQLFeatureNotSupportedException("the store has one user");
    }

    @Override
    public PrintWriter getLogWriter() throws SQLException {
        return writing.getLogWriter();
    }

    @Override
    public void setLogWriter(PrintWriter out) throws SQLException {
        writing.setLogWriter(out);
    }

    @Override
    public void setLoginTimeout(int seconds) throws SQLException {
        writing.setLoginTimeout(seconds);
    }

    @Override
    public int getLoginTimeout() throws SQLException {
        return writing.getLoginTimeout();
    }

    @Override
    public Logger getParentLogger() throws SQLFeatureNotSupportedException {
        return writing.getParentLogger();
    }

    @Override
    public <T> T unwrap(Class<T> type) throws SQLException {
        return writing.unwrap(type);
    }

    @Override
    public boolean isWrapperFor(Class<?> type) throws SQLException {
        return writing.isWrapperFor(type);
    }

    @Override
    public void close() {
        reading.close();
        writing.close();
    }

    /** Another process may have the store from now on. */
    void giveUp() {
        if (held != null) {
            held.close();
        }
    }
}
