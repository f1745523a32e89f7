package dev.injectorplanner.app.jobs.quartz;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobTimes;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Two processes on one PostgreSQL, 200 depots due at the same moment; one is killed half way. Every due run must have its
 * effect exactly once. How long the killed node's runs waited is printed.
 */
class TwoNodesTest {
    private static final int DEPOTS = 200;
    private static final int HALF = DEPOTS / 2;

    private static KilledProcess node(String url, String name) throws Exception {
        return KilledProcess.start(List.of(), List.of("-Xmx256m"), TestNode.class, List.of(url, name));
    }

    @Test
    @Timeout(150)
    void each_due_run_has_its_effect_once_though_a_node_is_killed_half_way() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            String url = postgres.getJdbcUrl("postgres", "postgres");
            try (Store store = Store.open(new StoreSettings(url, "postgres", "postgres"))) {
                StoreSql sql = new StoreSql(store.dataSource());
                fill(store, sql);
                try (KilledProcess lost = node(url, "lost");
                        KilledProcess other = node(url, "other")) {
                    lost.awaitLine("ready true");
                    other.awaitLine("ready true");
                    run(sql, lost);
                }
            }
        }
    }

    private static void fill(Store store, StoreSql sql) {
        sql.retried(connection -> {
            for (int i = 0; i < DEPOTS; i++) {
                StoreSql.update(
                        connection,
                        "insert into depot values (?, ?, 'America/Chicago', 1, 8, 'MONDAY', 1, 1, 0)",
                        "D" + i,
                        "Depot " + i);
            }
            return StoreSql.update(connection, "create table effect (run_key varchar(200), node varchar(40))");
        });
        // once a year, so that nothing but the moment below is due
        new JobTimes(store.dataSource(), new DepotZones(store.dataSource()))
                .set(JobKind.NIGHTLY_PLAN, "", aYearFromNow(), true);
    }

    private static String aYearFromNow() {
        var yesterday = java.time.LocalDate.now().minusDays(2);
        return "0 12 " + Math.min(28, yesterday.getDayOfMonth()) + " " + yesterday.getMonthValue() + " *";
    }

    private static void run(StoreSql sql, KilledProcess lost) throws Exception {
        assertThat(count(sql, "select count(*) from qrtz_triggers where trigger_group = 'times'"))
                .isEqualTo(DEPOTS);
        Instant due = Instant.now().plusSeconds(2);
        sql.retried(connection -> StoreSql.update(
                connection,
                "update qrtz_triggers set next_fire_time = ? where trigger_group = 'times'",
                due.toEpochMilli()));
        await(sql, "outcome = 'DONE'", HALF);
        while (held(sql, lost).isEmpty()) {
            assertThat(count(sql, "select count(*) from job_run where outcome = 'DONE'"))
                    .as("done before the killed node had anything under way")
                    .isLessThan(DEPOTS);
            Thread.sleep(5);
        }
        lost.kill();
        lost.close();
        Instant killed = Instant.now();
        List<String> left = held(sql, lost);
        await(sql, "outcome = 'DONE'", DEPOTS);
        report(sql, killed, left);

        assertThat(count(sql, "select count(*) from job_run")).isEqualTo(DEPOTS);
        assertThat(count(sql, "select count(*) from effect")).isEqualTo(DEPOTS);
        assertThat(count(sql, "select count(distinct run_key) from effect")).isEqualTo(DEPOTS);
        assertThat(count(sql, "select count(*) from effect e join job_run r on r.run_key = e.run_key"))
                .isEqualTo(DEPOTS);
        assertThat(count(sql, "select count(*) from effect where node = 'lost'"))
                .isBetween(1L, DEPOTS - 1L);
        assertThat(count(sql, "select count(*) from effect where node = 'other'"))
                .isBetween(1L, DEPOTS - 1L);
    }

    /** Runs that the node has under way, by the process number in its name. */
    private static List<String> held(StoreSql sql, KilledProcess node) {
        return sql.list(
                "select run_key from job_run where outcome = 'RUNNING' and node like ?",
                row -> row.getString(1),
                node.pid() + "@%");
    }

    private static void await(StoreSql sql, String what, long least) throws InterruptedException {
        while (count(sql, "select count(*) from job_run where " + what) < least) {
            Thread.sleep(20);
        }
    }

    private static long count(StoreSql sql, String query) {
        return sql.list(query, row -> row.getLong(1)).get(0);
    }

    private static void report(StoreSql sql, Instant killed, List<String> left) {
        Instant last = killed;
        for (String key : left) {
            Instant ended = sql.list(
                            "select ended_at from job_run where run_key = ?",
                            row -> row.getObject(1, java.time.OffsetDateTime.class)
                                    .toInstant(),
                            key)
                    .get(0);
            last = ended.isAfter(last) ? ended : last;
        }
        System.err.printf(
                "Two nodes: %d runs were under way on the killed node; the last was made good %.1f s after it died; "
                        + "runs by node: %s%n",
                left.size(),
                Duration.between(killed, last).toMillis() / 1_000.0,
                sql.list(
                        "select node || ' ' || count(*) from effect group by node order by node",
                        row -> row.getString(1)));
    }
}
