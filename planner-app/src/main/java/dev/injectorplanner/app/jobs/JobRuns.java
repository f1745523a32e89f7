package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * The runs in the store: who has which, and how they ended. A run belongs to the node that claimed it for as long as that
 * node keeps its lease up; node and attempt together tell a late writer that the run is no longer its own.
 */
public final class JobRuns {
    private static final int LONGEST_TEXT = 2_000;
    private static final String OURS = " where run_key = ? and node = ? and attempt = ? and outcome = 'RUNNING'";

    private final StoreSql sql;
    private final InstantSource clock;
    private final String node;
    private final Duration lease;

    /**
     * @param node name of this process, one of its own among all that share the database
     * @param lease how long a silent node keeps a run; clocks of nodes must agree far better than that
     */
    public JobRuns(DataSource pool, InstantSource clock, String node, Duration lease) {
        this.sql = new StoreSql(pool);
        this.clock = clock;
        this.node = node;
        this.lease = lease;
    }

    Duration lease() {
        return lease;
    }

    /** Takes a run: a new one, a failed one whose time has come, or one whose node is silent. Its attempt; 0: not ours. */
    int claim(RunKey key, boolean byHand, int passedOver) {
        int again = claimAgain(key);
        return again > 0 ? again : insert(key, byHand, passedOver, RunOutcome.RUNNING) ? 1 : 0;
    }

    private int claimAgain(RunKey key) {
        Instant now = clock.instant();
        return sql.retried(connection -> {
            int taken = StoreSql.update(
                    connection,
                    "update job_run set outcome = 'RUNNING', node = ?, attempt = attempt + 1, started_at = ?,"
                            + " lease_until = ?, ended_at = null, next_try_at = null where run_key = ? and"
                            + " ((outcome = 'FAILED' and next_try_at <= ?) or (outcome = 'RUNNING' and lease_until < ?))",
                    node,
                    now,
                    now.plus(lease),
                    key.text(),
                    now,
                    now);
            return taken == 0
                    ? 0
                    : StoreSql.list(
                                    connection,
                                    "select attempt from job_run where run_key = ?",
                                    row -> row.getInt(1),
                                    key.text())
                            .get(0);
        });
    }

    /** Notes a run that was missed for too long; nothing where the run is known already. */
    void tooLate(RunKey key, int passedOver) {
        insert(key, false, passedOver, RunOutcome.TOO_LATE);
    }

    private boolean insert(RunKey key, boolean byHand, int passedOver, RunOutcome outcome) {
        Instant now = clock.instant();
        boolean running = outcome == RunOutcome.RUNNING;
        return sql.retried(connection -> {
            try {
                StoreSql.update(
                        connection,
                        "insert into job_run (run_key, job, depot, due_at, by_hand, node, attempt, outcome, started_at,"
                                + " ended_at, lease_until, passed_over, counts) values (?,?,?,?,?,?,?,?,?,?,?,?,'')",
                        key.text(),
                        key.kind().name(),
                        key.depot(),
                        key.due(),
                        byHand,
                        node,
                        running ? 1 : 0,
                        outcome.name(),
                        now,
                        running ? null : now,
                        running ? now.plus(lease) : null,
                        passedOver);
                return true;
            } catch (SQLException e) {
                if (StoreSql.isDouble(e)) {
                    connection.rollback();
                    return false;
                }
                throw e;
            }
        });
    }

    /** Keeps a run that is ours; false where it is not any more. */
    boolean keep(RunKey key, int attempt) {
        Instant until = clock.instant().plus(lease);
        return sql.retried(connection -> StoreSql.update(
                        connection, "update job_run set lease_until = ?" + OURS, until, key.text(), node, attempt)
                == 1);
    }

    /** Notes how far a run of ours is; its end replaces it, a failure leaves it. */
    void progress(RunKey key, int attempt, String words) {
        sql.retried(connection -> StoreSql.update(
                connection, "update job_run set counts = ?" + OURS, shortened(words), key.text(), node, attempt));
    }

    /**
     * Ends a run and writes its effect, both or neither.
     *
     * @throws RunLostException where the run was taken over meanwhile
     */
    void done(RunKey key, int attempt, TaskResult result) {
        end(key, attempt, RunOutcome.DONE, null, result.words(), null, result.effect());
    }

    /**
     * Ends an attempt that failed.
     *
     * @param nextTry when to try again; null to give up
     * @param effect what to write with the end
     * @throws RunLostException where the run was taken over meanwhile
     */
    void failed(RunKey key, int attempt, String error, @Nullable Instant nextTry, TaskResult.Effect effect) {
        RunOutcome outcome = nextTry == null ? RunOutcome.GIVEN_UP : RunOutcome.FAILED;
        end(key, attempt, outcome, nextTry, null, error, effect);
    }

    private void end(
            RunKey key,
            int attempt,
            RunOutcome outcome,
            @Nullable Instant nextTry,
            @Nullable String counts,
            @Nullable String error,
            TaskResult.Effect effect) {
        Instant now = clock.instant();
        sql.retried(connection -> {
            int ended = StoreSql.update(
                    connection,
                    "update job_run set outcome = ?, ended_at = ?, lease_until = null, next_try_at = ?,"
                            + " counts = coalesce(?, counts),"
                            + " error = ?" + OURS,
                    outcome.name(),
                    now,
                    nextTry,
                    counts == null ? null : shortened(counts),
                    error == null ? null : shortened(error),
                    key.text(),
                    node,
                    attempt);
            if (ended != 1) {
                throw new RunLostException(key, attempt);
            }
            effect.write(connection);
            return ended;
        });
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT);
    }

    /** Lets go of the runs of processes that are gone; only where no other process can have the store. */
    public void releaseAll() {
        sql.retried(connection ->
                StoreSql.update(connection, "update job_run set lease_until = started_at where outcome = 'RUNNING'"));
    }

    /** Runs to be tried again, or to be taken over, the oldest first. */
    public List<JobRun> listWaiting() {
        Instant now = clock.instant();
        return sql.list(
                "select * from job_run where (outcome = 'FAILED' and next_try_at <= ?)"
                        + " or (outcome = 'RUNNING' and lease_until < ?) order by due_at, run_key",
                JobRuns::run,
                now,
                now);
    }

    /** The newest runs by due time, {@code most} of them. */
    public List<JobRun> listNewest(int most) {
        return sql.list(
                "select * from job_run order by due_at desc, run_key fetch first " + most + " rows only", JobRuns::run);
    }

    public Optional<JobRun> find(RunKey key) {
        return sql.list("select * from job_run where run_key = ?", JobRuns::run, key.text()).stream()
                .findFirst();
    }

    private static JobRun run(ResultSet row) throws SQLException {
        return new JobRun(
                new RunKey(
                        JobKind.valueOf(row.getString("job")),
                        Objects.requireNonNullElse(row.getString("depot"), ""),
                        StoreSql.moment(row, "due_at")),
                row.getBoolean("by_hand"),
                row.getString("node"),
                row.getInt("attempt"),
                RunOutcome.valueOf(row.getString("outcome")),
                StoreSql.moment(row, "started_at"),
                StoreSql.instant(row, "ended_at"),
                StoreSql.instant(row, "next_try_at"),
                row.getInt("passed_over"),
                row.getString("counts"),
                row.getString("error"));
    }
}
