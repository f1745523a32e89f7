package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.jobs.FailedJob;
import dev.injectorplanner.app.jobs.JobWatch;
import dev.injectorplanner.app.jobs.RunKey;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.InstantSource;
import org.jspecify.annotations.Nullable;

/** A job that has failed for good raises an alert to the administrator; the next run that goes well clears it. */
record AlertedJobs(InstantSource clock) implements JobWatch {
    @Override
    public void givenUp(Connection connection, FailedJob failed) throws SQLException {
        Alerts.jobFailed(connection, failed.key().kind().words(), depot(failed.key()), failed.error(), clock.instant());
    }

    @Override
    public void wentWell(Connection connection, RunKey key) throws SQLException {
        Alerts.jobWentWell(connection, key.kind().words(), depot(key), clock.instant());
    }

    private static @Nullable String depot(RunKey key) {
        return key.findDepot().orElse(null);
    }
}
