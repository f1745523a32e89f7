package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Holds this machine's clock against the shared database's. Nodes share jobs by leases and due times, so a node whose clock
 * is off says so, and waits as long as another node is at work.
 */
public final class NodeClock {
    /** Far below the shortest lease of a run. */
    static final Duration MOST = Duration.ofSeconds(3);

    private static final Duration PAUSE = Duration.ofSeconds(5);
    private static final long SILENT_MILLIS = 30_000;
    private static final Logger LOG = LoggerFactory.getLogger(NodeClock.class);

    private NodeClock() {}

    /** Returns once the clocks agree, or no other node is at work. */
    public static void await(DataSource pool) {
        await(pool, InstantSource.system(), PAUSE);
    }

    static void await(DataSource pool, InstantSource clock, Duration pause) {
        boolean said = false;
        for (Duration off = difference(pool, clock); off.abs().compareTo(MOST) > 0; off = difference(pool, clock)) {
            boolean others = othersAtWork(pool);
            if (!said) {
                LOG.error(
                        "This machine's clock is {} s {} the database's{}. Fix: set it from a time server",
                        off.abs().toSeconds(),
                        off.isNegative() ? "behind" : "ahead of",
                        others ? "; another node is running, so this one waits" : "");
                said = true;
            }
            if (!others || !pause(pause)) {
                return;
            }
        }
    }

    /** How far this machine is ahead. */
    static Duration difference(DataSource pool, InstantSource clock) {
        return new StoreSql(pool).inTransaction(connection -> {
            Instant before = clock.instant();
            Instant there = Instant.ofEpochMilli(
                    number(connection, "select cast(extract(epoch from clock_timestamp()) * 1000 as bigint)"));
            Instant after = clock.instant();
            return Duration.between(
                    there, before.plus(Duration.between(before, after).dividedBy(2)));
        });
    }

    private static boolean othersAtWork(DataSource pool) {
        return new StoreSql(pool)
                .inTransaction(connection -> number(
                                connection,
                                "select count(*) from qrtz_scheduler_state where last_checkin_time >"
                                        + " extract(epoch from clock_timestamp()) * 1000 - " + SILENT_MILLIS)
                        > 0);
    }

    private static long number(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
        }
    }

    private static boolean pause(Duration pause) {
        try {
            Thread.sleep(pause.toMillis());
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
