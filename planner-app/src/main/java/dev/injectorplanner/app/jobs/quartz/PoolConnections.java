package dev.injectorplanner.app.jobs.quartz;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.quartz.utils.ConnectionProvider;

/** Gives Quartz the store's own pool. */
record PoolConnections(DataSource pool) implements ConnectionProvider {
    @Override
    public Connection getConnection() throws SQLException {
        return pool.getConnection();
    }

    @Override
    public void shutdown() {
        // the pool is the store's
    }

    @Override
    public void initialize() {
        // it is open already
    }
}
