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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The nightly plans of all depots on one PostgreSQL, by one node and by two with a core each ({@code taskset}), then by two of which
 * one is killed half way. {@code -Dnodes.trucks=2000}, in depots of 250.
 */
@Tag("benchmark")
class NodesBenchmark {
    private static final int TRUCKS = Integer.getInteger("nodes.trucks", 2_000);
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

    private record Running(Process process) implements AutoCloseable {
        static Running start(String url, int core) throws Exception {
            Process process = new ProcessBuilder(
                            "taskset",
                            "-c",
                            String.valueOf(core),
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx1g",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Node.class.getName(),
                            url)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            assertThat(process.inputReader().readLine()).isEqualTo("ready true");
            return new Running(process);
        }

        @Override
        public void close() throws Exception {
            process.outputWriter().close();
            process.waitFor();
        }
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
                round(sql, url, List.of(0), false); // fills the database's memory and the system's
                double one = round(sql, url, List.of(0), false);
                double two = round(sql, url, List.of(0, 1), false);
                double lost = round(sql, url, List.of(0, 1), true);
                System.out.printf(
                        "%,d trucks, %d depots: one node %.1f s, two nodes with a core each %.1f s (%.2f times as fast), two of which"
                                + " one is killed half way %.1f s; load average %.1f%n",
                        TRUCKS,
                        depots,
                        one,
                        two,
                        one / two,
                        lost,
                        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
            }
        }
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

    /** Seconds from the moment all depots are due to the last plan; each depot is planned once. */
    private double round(StoreSql sql, String url, List<Integer> cores, boolean kill) throws Exception {
        List<Running> nodes = new ArrayList<>();
        try {
            for (int core : cores) {
                nodes.add(Running.start(url, core));
            }
            long before = count(sql, DONE);
            Instant due = Instant.now().plusSeconds(2);
            sql.retried(connection -> StoreSql.update(
                    connection,
                    "update qrtz_triggers set next_fire_time = ? where trigger_group = 'times' and job_name like 'nightly-plan%'",
                    due.toEpochMilli()));
            boolean killed = !kill;
            while (count(sql, DONE) < before + depots) {
                Thread.sleep(50);
                if (!killed && count(sql, DONE) >= before + depots / 2) {
                    nodes.remove(0).process().toHandle().destroyForcibly();
                    killed = true;
                }
            }
            double seconds = Duration.between(due, Instant.now()).toMillis() / 1_000.0;
            assertThat(count(sql, DONE)).isEqualTo(before + depots);
            return seconds;
        } finally {
            for (Running node : nodes) {
                node.close();
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
