package dev.injectorplanner.app.jobs.quartz;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobRegistry;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.wiring.JobParts;
import dev.injectorplanner.app.wiring.JobsSettings;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** A process that runs jobs until its input ends; made to be killed. Each run takes a while and leaves one row. */
final class TestNode {
    private static final long TASK_MILLIS = 200;

    private TestNode() {}

    /** Short times, so that a test need not wait for a lost node. */
    static JobsSettings settings() {
        return new JobsSettings(
                new QuartzSettings(3, Duration.ofSeconds(1), Duration.ofSeconds(5)),
                Duration.ofSeconds(5),
                Optional.empty(),
                1,
                Optional.empty());
    }

    public static void main(String[] args) throws Exception {
        String name = args[1];
        JobRegistry registry = JobRegistry.builder()
                .add(JobKind.NIGHTLY_PLAN, context -> {
                    Thread.sleep(TASK_MILLIS);
                    return new TaskResult(
                            Map.of("rows", 1L),
                            connection -> StoreSql.update(
                                    connection,
                                    "insert into effect values (?, ?)",
                                    context.key().text(),
                                    name));
                })
                .build();
        try (Store store = Store.open(new StoreSettings(args[0], "postgres", "postgres"));
                JobParts parts =
                        JobParts.of(store, registry, (connection, failed) -> System.err.println(failed), settings());
                QuartzJobs jobs = parts.ready(store)) {
            jobs.begin();
            System.out.println("ready " + jobs.isRunning());
            System.out.flush();
            while (System.in.read() >= 0) {
                // runs until the test closes our input, or is gone
            }
        }
    }
}
