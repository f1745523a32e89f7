package dev.injectorplanner.app.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every job can rely on, on each database: a clock that can be moved, several nodes in one process. */
abstract class JobRunsContract {
    private static final Duration LEASE = Duration.ofMinutes(10); // far: the clock is moved by hand
    private static final RunKey KEY = new RunKey(JobKind.SWEEP, "", Instant.parse("2026-03-08T08:00:00Z"));

    private final MovableClock clock = new MovableClock(Instant.parse("2026-03-08T08:00:03Z"));
    private final List<FailedJob> told = new ArrayList<>();
    private final List<JobRunner> frames = new ArrayList<>();
    private final AtomicInteger attempts = new AtomicInteger();
    private Store store;

    abstract Store open() throws Exception;

    @BeforeEach
    void fill() throws Exception {
        store = open();
        sql().retried(connection -> {
            StoreSql.update(connection, "drop table if exists effect");
            StoreSql.update(connection, "delete from job_run");
            return StoreSql.update(connection, "create table effect (run_key varchar(200), node varchar(40))");
        });
    }

    @AfterEach
    void close() {
        frames.forEach(JobRunner::close);
        store.close();
    }

    private StoreSql sql() {
        return new StoreSql(store.dataSource());
    }

    private JobRuns runs(String node) {
        return new JobRuns(store.dataSource(), clock, node, LEASE);
    }

    private JobRunner frame(String node, JobTask task) {
        JobRunner frame = new JobRunner(
                runs(node),
                JobRegistry.builder().add(JobKind.SWEEP, task).build(),
                new DepotZones(store.dataSource()),
                (connection, failed) -> told.add(failed),
                clock);
        frames.add(frame);
        return frame;
    }

    private JobTask writing(String node) {
        return context -> {
            attempts.incrementAndGet();
            return new TaskResult(
                    Map.of("rows", 1L),
                    connection -> StoreSql.update(
                            connection,
                            "insert into effect values (?, ?)",
                            context.key().text(),
                            node));
        };
    }

    private List<String> effects() {
        return sql().list("select node from effect order by node", row -> row.getString(1));
    }

    private JobRun stored() {
        return runs("reader").find(KEY).orElseThrow();
    }

    @Test
    void a_run_that_is_done_is_not_repeated() {
        JobRunner frame = frame("a", writing("a"));
        assertThat(frame.run(KEY, false, 3)).isTrue();
        assertThat(frame.run(KEY, false, 0)).isFalse();
        assertThat(frame("b", writing("b")).run(KEY, true, 0)).isFalse();
        assertThat(effects()).containsExactly("a");
        JobRun run = stored();
        assertThat(run.outcome()).isEqualTo(RunOutcome.DONE);
        assertThat(run.counts()).isEqualTo("rows 1");
        assertThat(run.passedOver()).isEqualTo(3);
        assertThat(run.started()).isEqualTo(run.ended()).isEqualTo(clock.instant());
    }

    @Test
    void the_record_says_how_far_a_run_is_until_its_end_replaces_it() {
        List<String> shown = new ArrayList<>();
        frame("a", context -> {
                    context.progress().accept("readings.csv: 2,000 of 9,000 rows read, 1,999 stored, 1 refused.");
                    context.progress().accept("told too soon again");
                    shown.add(stored().outcome() + " " + stored().counts());
                    return TaskResult.counted(Map.of("rows", 9L));
                })
                .run(KEY, false, 0);
        assertThat(shown).containsExactly("RUNNING readings.csv: 2,000 of 9,000 rows read, 1,999 stored, 1 refused.");
        assertThat(stored().counts()).isEqualTo("rows 9");
    }

    @Test
    void the_record_of_a_failed_run_keeps_how_far_it_was() {
        frame("a", context -> {
                    context.progress().accept("readings.csv: 2,000 of 9,000 rows read");
                    throw new IllegalStateException("the disk is gone");
                })
                .run(KEY, false, 0);
        assertThat(stored().outcome()).isEqualTo(RunOutcome.FAILED);
        assertThat(stored().counts()).isEqualTo("readings.csv: 2,000 of 9,000 rows read");
        assertThat(stored().error()).contains("the disk is gone");
    }

    @Test
    void of_many_nodes_at_once_one_runs_it() throws Exception {
        int nodes = 6;
        CountDownLatch start = new CountDownLatch(1);
        var pool = Executors.newFixedThreadPool(nodes);
        List<Future<Boolean>> answers = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            JobRunner frame = frame("n" + i, writing("n" + i));
            answers.add(pool.submit(() -> {
                start.await();
                return frame.run(KEY, false, 0);
            }));
        }
        start.countDown();
        int ran = 0;
        for (Future<Boolean> answer : answers) {
            ran += answer.get(60, TimeUnit.SECONDS) ? 1 : 0;
        }
        pool.shutdown();
        assertThat(ran).isEqualTo(1);
        assertThat(effects()).hasSize(1);
    }

    @Test
    void a_failed_run_is_tried_again_after_1_5_and_25_minutes_then_someone_is_told() {
        JobRunner frame = frame("a", context -> {
            throw new IllegalStateException("attempt " + attempts.incrementAndGet());
        });
        for (int minutes : new int[] {1, 5, 25}) {
            assertThat(frame.run(KEY, false, 0)).isTrue();
            assertThat(stored().outcome()).isEqualTo(RunOutcome.FAILED);
            assertThat(stored().nextTry()).isEqualTo(clock.instant().plus(Duration.ofMinutes(minutes)));
            clock.move(Duration.ofMinutes(minutes).minusSeconds(1));
            assertThat(runs("b").listWaiting()).isEmpty();
            assertThat(frame.run(KEY, false, 0)).as("too early").isFalse();
            clock.move(Duration.ofSeconds(1));
            assertThat(runs("b").listWaiting()).extracting(JobRun::key).containsExactly(KEY);
            assertThat(told).isEmpty();
        }
        assertThat(frame.run(KEY, false, 0)).isTrue();
        assertThat(stored().outcome()).isEqualTo(RunOutcome.GIVEN_UP);
        assertThat(stored().error()).isEqualTo("IllegalStateException: attempt 4");
        assertThat(told).containsExactly(new FailedJob(KEY, 4, "IllegalStateException: attempt 4"));
        clock.move(Duration.ofDays(1));
        assertThat(frame.run(KEY, false, 0)).isFalse();
        assertThat(attempts).hasValue(4);
    }

    @Test
    void an_effect_that_fails_leaves_nothing_and_is_tried_again() {
        JobRunner bad = frame(
                "a",
                context -> new TaskResult(Map.of(), connection -> {
                    StoreSql.update(connection, "insert into effect values ('half', 'a')");
                    throw new java.sql.SQLException("the disk is full");
                }));
        assertThat(bad.run(KEY, false, 0)).isTrue();
        assertThat(effects()).isEmpty();
        assertThat(stored().outcome()).isEqualTo(RunOutcome.FAILED);
        clock.move(Duration.ofMinutes(1));
        assertThat(frame("b", writing("b")).run(KEY, false, 0)).isTrue();
        assertThat(effects()).containsExactly("b");
        assertThat(stored().attempt()).isEqualTo(2);
        assertThat(stored().error()).isNull();
    }

    @Test
    void a_run_of_a_node_that_is_gone_is_taken_over_when_its_lease_is_over() {
        assertThat(runs("gone").claim(KEY, false, 0)).isEqualTo(1);
        JobRunner frame = frame("b", writing("b"));
        clock.move(LEASE.minusSeconds(1));
        assertThat(frame.run(KEY, false, 0)).as("the lease holds").isFalse();
        clock.move(Duration.ofSeconds(2));
        assertThat(runs("b").listWaiting()).extracting(JobRun::key).containsExactly(KEY);
        assertThat(frame.run(KEY, false, 0)).isTrue();
        assertThat(effects()).containsExactly("b");
        assertThat(stored().attempt()).isEqualTo(2);
    }

    @Test
    void a_node_that_slept_through_its_lease_leaves_no_effect() {
        JobRunner quick = frame("quick", writing("quick"));
        JobRunner sleeper = frame("sleeper", context -> {
            clock.move(LEASE.plusSeconds(1)); // meanwhile it did not live
            assertThat(quick.run(KEY, false, 0)).isTrue();
            return writing("sleeper").run(context);
        });
        assertThat(sleeper.run(KEY, false, 0)).isTrue();
        assertThat(effects()).containsExactly("quick");
        assertThat(stored().node()).isEqualTo("quick");
        assertThat(stored().outcome()).isEqualTo(RunOutcome.DONE);
        assertThat(told).isEmpty();
    }

    @Test
    void a_lease_that_is_kept_up_is_not_taken_over() {
        JobRuns runs = runs("a");
        assertThat(runs.claim(KEY, false, 0)).isEqualTo(1);
        for (int i = 0; i < 5; i++) {
            clock.move(LEASE.dividedBy(2));
            assertThat(runs.keep(KEY, 1)).isTrue();
        }
        assertThat(frame("b", writing("b")).run(KEY, false, 0)).isFalse();
        assertThat(runs("b").keep(KEY, 1)).as("not b's").isFalse();
    }

    @Test
    void a_run_that_kills_every_node_is_given_up() {
        for (int i = 0; i < Backoff.mostAttempts(); i++) {
            assertThat(runs("n" + i).claim(KEY, false, 0)).isEqualTo(i + 1);
            clock.move(LEASE.plusSeconds(1));
        }
        frame("last", writing("last")).run(KEY, false, 0);
        assertThat(effects()).isEmpty();
        assertThat(stored().outcome()).isEqualTo(RunOutcome.GIVEN_UP);
        assertThat(told).hasSize(1);
        assertThat(told.get(0).error()).contains("stopped during each of 4 attempts");
    }

    @Test
    void what_cannot_be_told_is_not_given_up_either() {
        for (int i = 0; i < Backoff.mostAttempts(); i++) {
            assertThat(runs("n" + i).claim(KEY, false, 0)).isEqualTo(i + 1);
            clock.move(LEASE.plusSeconds(1));
        }
        boolean[] deaf = {true};
        JobRunner frame = new JobRunner(
                runs("last"),
                JobRegistry.builder().add(KEY.kind(), writing("last")).build(),
                new DepotZones(store.dataSource()),
                (connection, failed) -> {
                    if (deaf[0]) {
                        throw new java.sql.SQLException("the alert cannot be written");
                    }
                    told.add(failed);
                },
                clock);
        frame.run(KEY, false, 0);
        assertThat(stored().outcome()).isEqualTo(RunOutcome.RUNNING);
        deaf[0] = false;
        clock.move(LEASE.plusSeconds(1));
        frame.run(KEY, false, 0);
        frame.close();
        assertThat(stored().outcome()).isEqualTo(RunOutcome.GIVEN_UP);
        assertThat(told).hasSize(1);
    }

    @Test
    void a_run_that_is_too_late_is_noted_once_and_never_done() {
        JobRunner frame = frame("a", writing("a"));
        frame.tooLate(KEY, 7);
        frame.tooLate(KEY, 7);
        assertThat(frame.run(KEY, false, 0)).isFalse();
        assertThat(effects()).isEmpty();
        assertThat(stored().outcome()).isEqualTo(RunOutcome.TOO_LATE);
        assertThat(stored().attempt()).isZero();
        assertThat(runs("a").listNewest(10)).hasSize(1);
    }

    @Test
    void upkeep_starts_what_waits_and_leaves_alone_what_has_no_task() {
        RunKey other = new RunKey(JobKind.BACKUP, "", KEY.due());
        runs("gone").claim(KEY, false, 0);
        runs("gone").claim(other, false, 0);
        clock.move(LEASE.plusSeconds(1));
        List<RunKey> started = new ArrayList<>();
        JobRunner frame = frame("b", writing("b"));
        new Upkeep(frame.runs(), frame.registry(), run -> started.add(run.key())).once();
        assertThat(started).containsExactly(KEY);
    }
}
