package dev.injectorplanner.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.jobs.DepotZones;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobTimes;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.jobs.quartz.QuartzSettings;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.generate.FleetSpec;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The nightly plans of all depots on one PostgreSQL, by nodes with a core each ({@code taskset}): one and two of them by turns, since
 * others use the machine, then three, then two of which one is killed half way. Beside the time, the seconds of processor that the
 * busiest node used for the plans: what the time would be on cores that nobody else uses. {@code -Dnodes.trucks=2000}, in depots of 250.
 */
@Tag("benchmark")
class NodesBenchmark {
    private static final int TRUCKS = Integer.getInteger("nodes.trucks", 2_000);
    private static final int PAIRS = Integer.getInteger("nodes.pairs", 2);
    private static final Duration LONGEST = Duration.ofMinutes(Integer.getInteger("nodes.minutes", 15));
    private static final double READING_EVERY_DAYS = 14;
    private static final String DONE = "select count(*) from job_run where outcome = 'DONE' and job = 'NIGHTLY_PLAN'";

    @TempDir
    private Path folder;

    private int depots;

    /** A node as it serves, without pages: one job at a time. */
    static final class Node {
        private Node() {}

        public static void main(String[] args) throws Exception {
            JobsSettings settings = new JobsSettings(
                    new QuartzSettings(1, Duration.ofSeconds(1), Duration.ofSeconds(5)),
                    Duration.ofSeconds(5),
                    Optional.empty(),
                    1,
                    Optional.empty());
            try (Application application = Application.open(new StoreSettings(args[0], "postgres", "postgres"));
                    JobParts parts = JobParts.of(application, settings);
                    QuartzJobs jobs = parts.ready(application.store())) {
                jobs.begin();
                System.out.println("ready " + jobs.isRunning());
                System.out.flush();
                while (System.in.read() >= 0) {
                    // runs until our input is closed, or until it is killed
                }
            }
        }
    }

    private static KilledProcess node(String url, int core) throws Exception {
        KilledProcess node = KilledProcess.start(
                List.of("taskset", "-c", String.valueOf(core)),
                List.of("-Xmx1g", "-XX:ActiveProcessorCount=1"),
                Node.class,
                List.of(url));
        node.awaitLine("ready true");
        return node;
    }

    private static double processor(KilledProcess node) {
        return node.processorTime().toMillis() / 1_000.0;
    }

    @Test
    void depots_of_a_large_fleet_by_one_node_and_by_two() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            String url = postgres.getJdbcUrl("postgres", "postgres");
            try (Application application = Application.open(new StoreSettings(url, "postgres", "postgres"))) {
                FleetSnapshot fleet = fleet();
                depots = fleet.depots().size();
                application
                        .intake()
                        .load(
                                FleetFiles.write(fleet, Files.createDirectories(folder.resolve("files"))),
                                LoadSettings.of(LoadSettings.Mode.GOOD_ROWS),
                                LoadListener.SILENT);
                var pool = application.store().dataSource();
                new JobTimes(pool, new DepotZones(pool)).set(JobKind.NIGHTLY_PLAN, "", onceAYear(), true);
                StoreSql sql = new StoreSql(pool);
                print("one node, to fill memories", round(sql, url, List.of(0), false));
                for (int pair = 0; pair < PAIRS; pair++) {
                    Round one = round(sql, url, List.of(0), false);
                    Round two = round(sql, url, List.of(0, 1), false);
                    print("one node", one);
                    print("two nodes", two);
                    System.out.printf(
                            "two nodes %.2f times as fast by the clock, %.2f by processor%n",
                            one.seconds() / two.seconds(), one.busiest() / two.busiest());
                }
                print("three nodes, two on one core", round(sql, url, List.of(0, 1, 0), false));
                print("two nodes, one killed half way", round(sql, url, List.of(0, 1), true));
            }
        }
    }

    /**
     * @param seconds from the moment all depots are due to the last plan
     * @param busiest processor of the node that used most since it was ready
     * @param depotsByNode plans that each node made
     */
    private record Round(double seconds, double busiest, List<Long> depotsByNode) {}

    private void print(String what, Round round) {
        System.out.printf(
                "%,d trucks, %d depots, %s: %.1f s, busiest node %.1f s of processor, depots by node %s; load average %.1f%n",
                TRUCKS,
                depots,
                what,
                round.seconds(),
                round.busiest(),
                round.depotsByNode(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static FleetSnapshot fleet() {
        FleetSpec spec = DemoFleet.ofSize(TRUCKS, 3);
        return new FleetGenerator(new FleetSpec(
                        spec.catalogue(),
                        spec.seed(),
                        TRUCKS,
                        spec.today(),
                        spec.historyDays(),
                        READING_EVERY_DAYS,
                        spec.replacedMeterShare()))
                .generate()
                .snapshot();
    }

    /** All depots made due at once; each is planned once. */
    private Round round(StoreSql sql, String url, List<Integer> cores, boolean kill) throws Exception {
        List<KilledProcess> nodes = new ArrayList<>();
        try {
            for (int core : cores) {
                nodes.add(node(url, core));
            }
            List<Double> before = nodes.stream().map(NodesBenchmark::processor).toList();
            long done = count(sql, DONE);
            Instant due = Instant.now().plusSeconds(2);
            sql.retried(connection -> StoreSql.update(
                    connection,
                    "update qrtz_triggers set next_fire_time = ? where trigger_group = 'times' and job_name like 'nightly-plan%'",
                    due.toEpochMilli()));
            await(sql, done, nodes, kill);
            double seconds = Duration.between(due, Instant.now()).toMillis() / 1_000.0;
            double busiest = 0;
            for (int i = 0; i < nodes.size(); i++) {
                busiest = Math.max(busiest, processor(nodes.get(i)) - before.get(i));
            }
            assertThat(count(sql, DONE)).isEqualTo(done + depots);
            return new Round(
                    seconds,
                    busiest,
                    sql.list(
                            "select count(*) from job_run where outcome = 'DONE' and job = 'NIGHTLY_PLAN' and due_at >= ? group by"
                                    + " node order by 1",
                            row -> row.getLong(1),
                            due.minusSeconds(1).atOffset(ZoneOffset.UTC)));
        } finally {
            for (KilledProcess node : nodes) {
                node.close();
            }
        }
    }

    private void await(StoreSql sql, long before, List<KilledProcess> nodes, boolean kill) throws Exception {
        Instant end = Instant.now().plus(LONGEST);
        boolean killed = !kill;
        while (count(sql, DONE) < before + depots) {
            assertThat(Instant.now())
                    .as("%s done, %s before", count(sql, DONE), before)
                    .isBefore(end);
            Thread.sleep(50);
            if (!killed && count(sql, DONE) >= before + depots / 2) {
                nodes.get(0).kill();
                killed = true;
            }
        }
    }

    private static long count(StoreSql sql, String query) {
        return sql.list(query, row -> row.getLong(1)).get(0);
    }

    /** So that nothing is due but what a round makes so. */
    private static String onceAYear() {
        LocalDate before = LocalDate.now().minusDays(3);
        return "0 12 " + Math.min(28, before.getDayOfMonth()) + " " + before.getMonthValue() + " *";
    }
}
