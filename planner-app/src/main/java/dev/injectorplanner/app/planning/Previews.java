package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.store.StoreSql;
import java.time.Duration;
import java.time.InstantSource;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** When a change to a plan was last previewed, kept in the store: every node that shares it knows. */
final class Previews {
    private static final Logger LOG = LoggerFactory.getLogger(Previews.class);
    private static final String WHERE = " where job = 'LIVE_PLAN' and depot = '' and kind = 'previewed'";

    private final StoreSql sql;
    private final InstantSource clock;

    Previews(DataSource pool, InstantSource clock) {
        this.sql = new StoreSql(pool);
        this.clock = clock;
    }

    /** Somebody previews a change now. */
    void begun() {
        try {
            sql.retried(
                    connection -> StoreSql.update(connection, "update job_mark set mark = ?" + WHERE, clock.millis()));
        } catch (RuntimeException e) {
            LOG.warn("A preview could not be noted; replanning by itself does not wait for it", e);
        }
    }

    /** Whether somebody did so a short while ago. */
    boolean within(Duration time) {
        long since = clock.millis() - time.toMillis();
        return sql.list("select mark from job_mark" + WHERE, row -> row.getLong(1)).stream()
                .anyMatch(mark -> mark >= since);
    }
}
