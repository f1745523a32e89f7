package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Instant;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** A job that failed for good, told in a transaction of its own. */
public final class GivenUp {
    private GivenUp() {}

    public static void tell(DataSource store, String job, @Nullable String depot, String error, Instant at) {
        new StoreSql(store).inTransaction(connection -> {
            Alerts.jobFailed(connection, job, depot, error, at);
            return true;
        });
    }
}
