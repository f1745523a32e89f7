package dev.injectorplanner.app.web.guard;

import dev.injectorplanner.app.store.Store;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Asks the store once a second, on a connection of its own, whether it answers. Health and pages look at what the watch saw,
 * so that nobody waits for a database that is away, and the first to come after it is back is served.
 */
public final class StoreWatch implements AutoCloseable {
    private static final Duration EVERY = Duration.ofSeconds(1);
    private static final int PATIENCE_SECONDS = 2;
    private static final Logger LOG = LoggerFactory.getLogger(StoreWatch.class);

    /** A single look that comes back late says more of a busy machine than of the store. */
    private static final int MISSES = 2;

    private final Store store;
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "store-watch");
        thread.setDaemon(true);
        return thread;
    });
    private @Nullable Connection connection;
    private int missed;
    private volatile boolean up = true;

    StoreWatch(Store store) {
        this.store = store;
        timer.scheduleWithFixedDelay(this::look, EVERY.toMillis(), EVERY.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Whether the store answered when it was last asked. */
    public boolean isUp() {
        return up;
    }

    private void look() {
        String trouble = trouble();
        missed = trouble == null ? 0 : missed + 1;
        if (trouble == null && !up) {
            up = true;
            LOG.warn("The database is back");
        } else if (missed >= MISSES && up) {
            up = false;
            LOG.error("The database does not answer; pages show this until it is back. Its error: {}", trouble);
        }
    }

    private @Nullable String trouble() {
        try {
            Connection open = connection;
            if (open == null) {
                open = store.connectDirectly();
                connection = open;
            }
            if (open.isValid(PATIENCE_SECONDS)) {
                return null;
            }
            drop();
            return "its connection broke";
        } catch (SQLException | RuntimeException e) {
            drop();
            return String.valueOf(e.getMessage());
        }
    }

    private void drop() {
        Connection open = connection;
        connection = null;
        if (open != null) {
            try {
                open.close();
            } catch (SQLException e) {
                LOG.debug("A broken connection did not close", e);
            }
        }
    }

    @Override
    public void close() {
        timer.shutdownNow();
        try {
            timer.awaitTermination(PATIENCE_SECONDS + 1L, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        drop();
    }
}
