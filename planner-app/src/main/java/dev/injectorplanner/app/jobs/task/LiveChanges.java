package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.TaskResult.Effect;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;

/**
 * What was changed since plans were last made by themselves: close-outs and loads, as the audit trail has them, whoever made
 * them and on whichever node. A mark in the store says how far they were seen.
 */
public final class LiveChanges {
    /** What the audit trail calls them, and how they are said. */
    private static final Map<String, String> KINDS = Map.of(
            "close out a visit", "close-out",
            "correct a close-out", "corrected close-out",
            "void a close-out", "voided close-out",
            "load a file", "load",
            "send a vehicle log", "vehicle log");

    private static final String MARK = "audit";

    private final StoreSql sql;

    public LiveChanges(DataSource pool) {
        this.sql = new StoreSql(pool);
    }

    /**
     * One change.
     *
     * @param id its number in the audit trail
     * @param subject what it was done to
     * @param truck the truck of a close-out; empty for a load, which may bring rows of any
     */
    record Change(long id, Instant at, String who, String what, String subject, Optional<String> truck) {
        String words() {
            return KINDS.getOrDefault(what, what) + " of " + subject + " by " + who;
        }
    }

    /** How far changes were seen; none where nobody looked yet. */
    Optional<Long> mark() {
        return sql
                .list(
                        "select mark from job_mark where job = ? and depot = '' and kind = ?",
                        row -> row.getLong(1),
                        JobKind.LIVE_PLAN.name(),
                        MARK)
                .stream()
                .findFirst();
    }

    /** The number of the newest entry of the audit trail. */
    long newest() {
        return sql.list("select coalesce(max(id), 0) from audit_entry", row -> row.getLong(1))
                .get(0);
    }

    /** Changes that nothing was planned after, in their order. */
    List<Change> since(long mark) {
        List<Object> values = new ArrayList<>(List.of(mark));
        values.addAll(KINDS.keySet());
        return sql.list(
                "select id, happened_at, who, what, subject, truck from audit_entry where id > ? and what in ("
                        + String.join(
                                ", ", KINDS.keySet().stream().map(each -> "?").toList()) + ") order by id",
                row -> new Change(
                        row.getLong(1),
                        StoreSql.moment(row, "happened_at"),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        Optional.ofNullable(row.getString(6))),
                values.toArray());
    }

    /** The depot of a truck. */
    Optional<String> depotOf(String truck) {
        return sql.list("select depot from truck where truck = ?", row -> row.getString(1), truck).stream()
                .findFirst();
    }

    /** Whether a run is under way, waits for its next try, or failed for good after the newest change. */
    boolean isTried(Instant change) {
        return !sql.list(
                        "select run_key from job_run where job = ? and (outcome in ('RUNNING', 'FAILED')"
                                + " or (outcome = 'GIVEN_UP' and due_at >= ?))",
                        row -> row.getString(1),
                        JobKind.LIVE_PLAN.name(),
                        change)
                .isEmpty();
    }

    /** Notes how far changes were seen. */
    static Effect seen(long mark) {
        return connection -> {
            StoreSql.update(
                    connection,
                    "delete from job_mark where job = ? and depot = '' and kind = ?",
                    JobKind.LIVE_PLAN.name(),
                    MARK);
            StoreSql.update(
                    connection,
                    "insert into job_mark (job, depot, kind, mark) values (?, '', ?, ?)",
                    JobKind.LIVE_PLAN.name(),
                    MARK,
                    mark);
        };
    }
}
