package dev.injectorplanner.app.web;

import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.store.Store;
import java.sql.Connection;
import java.sql.SQLException;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;

/** Healthy: the store answers and jobs are fired. */
record JobsHealth(Store store, QuartzJobs jobs) implements HealthIndicator {
    private static final int PATIENCE_SECONDS = 2;

    @Override
    public Health health() {
        try (Connection connection = store.dataSource().getConnection()) {
            return (connection.isValid(PATIENCE_SECONDS) && jobs.isRunning() ? Health.up() : Health.down()).build();
        } catch (SQLException e) {
            return Health.down(e).build();
        }
    }
}
