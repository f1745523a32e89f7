package dev.injectorplanner.app.alert;

import dev.injectorplanner.app.alert.AlertRows.Event;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Depot;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** Alerts: what somebody must decide. Of a truck, cylinder and rule at most one is open. */
public final class Alerts {
    private static final int LONGEST_WORDS = 2_000;

    private static final int MOST_TRIES = 5;
    private static final Object TURN = new Object();

    private final StoreSql sql;
    private final PageAnswers<String, Integer> raised;

    public Alerts(DataSource store) {
        this.sql = new StoreSql(store);
        this.raised = new PageAnswers<>(store);
    }

    /**
     * Holds the alerts of each depot of a plan against what it found: raises, marks as planned, refreshes, clears, and
     * brings back those whose silence has ended. Running it twice changes nothing more.
     *
     * @param at when, for the history
     */
    public AlertCounts update(Planned planned, Instant at) {
        AlertCounts counts = AlertCounts.NONE;
        for (Depot depot : planned.fleet().depots()) {
            counts = counts.plus(update(planned, depot.depot(), at));
        }
        return counts;
    }

    /** Two plans of a depot at once would both raise what is new; another node's alerts are met by looking again. */
    private AlertCounts update(Planned planned, String depot, Instant at) {
        synchronized (TURN) {
            for (int tried = 1; ; tried++) {
                try {
                    return new PlanUpdate(sql, planned, depot, at)
                            .run()
                            .plus(new PartAlerts(sql, depot, at).update(planned.plan()));
                } catch (StoreException e) {
                    if (tried == MOST_TRIES || !StoreSql.isOtherFaster(e)) {
                        throw e;
                    }
                }
            }
        }
    }

    /** The same, and notes in the audit trail what changed, right after it. */
    public AlertCounts update(Planned planned, Instant at, String by) {
        AlertCounts counts = update(planned, at);
        if (counts.anyChange()) {
            String depots = planned.fleet().depots().stream().map(Depot::depot).collect(Collectors.joining(", "));
            sql.inTransaction(connection -> {
                AuditTrail.write(
                        connection, Instant.now(), by, "check alerts against a plan", depots, "", counts.words());
                return true;
            });
        }
        return counts;
    }

    /** Alerts in some states, of one depot or all, the most pressing first. */
    public List<Alert> list(@Nullable String depot, Collection<AlertState> states) {
        List<Object> values = new ArrayList<>(states.stream().map(Enum::name).toList());
        String where = "where state in (" + String.join(",", Collections.nCopies(states.size(), "?")) + ")";
        if (depot != null) {
            where += " and depot = ?";
            values.add(depot);
        }
        String rest = where + " order by due_on, truck_key, cylinder_key, rule, id";
        return sql.inTransaction(connection -> AlertRows.list(connection, rest, values.toArray()));
    }

    /** How many nobody has said yet to know of, of one depot or all. Goes by the indexes: every page asks for it. */
    public int countRaised(@Nullable String depot) {
        return raised.of(depot == null ? "" : depot, key -> askRaised(depot));
    }

    private int askRaised(@Nullable String depot) {
        String open = "a.open_key = 0 and a.state = 'RAISED'";
        if (depot != null) {
            return count("select count(*) from alert a where a.depot = ? and " + open, depot);
        }
        return count("select count(*) from depot d join alert a on a.depot = d.depot where " + open)
                + count("select count(*) from alert a where a.truck_key = '' and a.depot is null and " + open);
    }

    private int count(String query, Object... values) {
        return sql.inTransaction(connection -> StoreSql.list(connection, query, row -> row.getInt(1), values))
                .get(0);
    }

    /** @throws InvalidValueException where there is no such alert */
    public Alert get(long id) {
        return sql.inTransaction(connection -> get(connection, id));
    }

    private static Alert get(Connection connection, long id) throws SQLException {
        return AlertRows.list(connection, "where id = ?", id).stream()
                .findFirst()
                .orElseThrow(() ->
                        new InvalidValueException("alert", id, "is not known", "use a number from the list of alerts"));
    }

    /** An alert's history, oldest first. */
    public List<AlertEvent> history(long id) {
        return sql.inTransaction(connection -> StoreSql.list(
                connection,
                "select happened_at, who, from_state, to_state, why from alert_event where alert = ? order by id",
                row -> {
                    String from = row.getString("from_state");
                    return new AlertEvent(
                            StoreSql.moment(row, "happened_at"),
                            row.getString("who"),
                            from == null ? null : AlertState.valueOf(from),
                            AlertState.valueOf(row.getString("to_state")),
                            row.getString("why"));
                },
                id));
    }

    /** Somebody knows of it. It stays open; one that a visit answers stays planned. */
    public Alert seen(long id, String who, Instant at) {
        return change(id, "acknowledge an alert", who, at, "acknowledged", alert -> {
            AlertState state = alert.state() == AlertState.RAISED ? AlertState.SEEN : alert.state();
            return AlertEdits.seen(alert, state, at);
        });
    }

    /**
     * Silences it until a day, on which the next plan brings it back if it is still found.
     *
     * @param today the day it is done on, before {@code until}
     * @param why a reason, for whoever asks later
     */
    public Alert mute(long id, LocalDate until, String why, String who, Instant at, LocalDate today) {
        if (!until.isAfter(today)) {
            throw new InvalidValueException("until", until, "is not after " + today, "name a later day");
        }
        String reason = Require.text("why", why);
        if (reason.isEmpty()) {
            throw new InvalidValueException("why", "", "is empty", "enter why it may wait");
        }
        return change(
                id,
                "snooze an alert",
                who,
                at,
                "until " + until + ": " + reason,
                alert -> AlertEdits.muted(alert, until, reason));
    }

    /** Ends its snooze: it is as it was before, new or acknowledged. One that is not snoozed stays as it is. */
    public Alert wake(long id, String who, Instant at) {
        return change(id, "wake an alert", who, at, "woken", alert -> {
            if (alert.state() != AlertState.MUTED) {
                return alert;
            }
            return AlertEdits.openAgain(alert, alert.seenAt() == null ? AlertState.RAISED : AlertState.SEEN);
        });
    }

    /** A job that failed, for the administrator; told again only after it went well in between. Part of a transaction that others began. */
    public static void jobFailed(Connection connection, String job, @Nullable String depot, String error, Instant at)
            throws SQLException {
        String words = shortened(error);
        String name = jobName(job, depot);
        List<Alert> open = openOfJob(connection, name);
        if (open.isEmpty()) {
            Alert alert = AlertEdits.ofJob(StoreSql.nextIds(connection, "alert_seq"), depot, name, words, at);
            AlertRows.insert(connection, List.of(alert));
            AlertRows.insertEvents(
                    connection, List.of(new Event(alert.id(), at, "jobs", null, AlertState.RAISED, words)));
        } else {
            StoreSql.update(
                    connection,
                    "update alert set evidence = ? where id = ?",
                    words,
                    open.get(0).id());
        }
    }

    /** The job went well: its alert is cleared. Part of a transaction that others began. */
    public static void jobWentWell(Connection connection, String job, @Nullable String depot, Instant at)
            throws SQLException {
        for (Alert alert : openOfJob(connection, jobName(job, depot))) {
            String why = "went well on " + at.atZone(ZoneOffset.UTC).toLocalDate();
            store(connection, alert, AlertEdits.cleared(alert, at, why), "jobs", at, why);
        }
    }

    private static String jobName(String job, @Nullable String depot) {
        return depot == null ? job : job + ", " + depot;
    }

    private static List<Alert> openOfJob(Connection connection, String name) throws SQLException {
        return AlertRows.list(
                connection,
                "where truck_key = '' and cylinder_key = 0 and rule = 'JOB' and subject_key = ? and open_key = 0",
                name);
    }

    /** Alerts of a depot that no digest has told yet, or told as planned and now without a visit; most pressing first. */
    public List<Alert> listUntold(String depot) {
        return sql.inTransaction(connection -> AlertRows.list(
                connection,
                "where depot = ? and open_key = 0 and rule <> 'JOB' and ((told is null and state in ('RAISED',"
                        + " 'PLANNED')) or (told = 'PLANNED' and state = 'RAISED'))"
                        + " order by due_on, truck_key, cylinder_key, rule, id",
                depot));
    }

    /** Alerts of failed jobs that no mail has told yet. */
    public List<Alert> listUntoldJobs() {
        return sql.inTransaction(
                connection -> AlertRows.list(
                        connection,
                        "where rule = 'JOB' and truck_key = '' and open_key = 0 and told is null and state = 'RAISED' order by id"));
    }

    /** Marks alerts as told, within the transaction that queues the mail, so that neither is without the other. */
    public static void markTold(Connection connection, List<Alert> alerts) throws SQLException {
        for (Alert alert : alerts) {
            StoreSql.update(
                    connection,
                    "update alert set told = ? where id = ?",
                    alert.state() == AlertState.PLANNED ? "PLANNED" : "RAISED",
                    alert.id());
        }
    }

    private interface Edit {
        Alert of(Alert alert);
    }

    private Alert change(long id, String what, String who, Instant at, String why, Edit edit) {
        String name = Require.name("who", who);
        return sql.inTransaction(connection -> {
            Alert alert = get(connection, id);
            if (alert.state() == AlertState.CLEARED) {
                throw new InvalidValueException(
                        "alert", id, "is cleared: " + alert.clearedWhy(), "there is nothing left to do");
            }
            Alert changed = edit.of(alert);
            store(connection, alert, changed, name, at, why);
            AuditTrail.write(
                    connection,
                    at,
                    name,
                    what,
                    "alert " + id + ": " + alert.about() + ", " + alert.ruleWords(),
                    alert.state().word(),
                    changed.state().word() + ", " + why);
            return changed;
        });
    }

    private static void store(Connection connection, Alert before, Alert after, String who, Instant at, String why)
            throws SQLException {
        if (!AlertRows.update(connection, List.of(after), List.of(before))[0]) {
            throw new InvalidValueException("alert", before.id(), "was changed just now by somebody else", "try again");
        }
        AlertRows.insertEvents(
                connection, List.of(new Event(before.id(), at, who, before.state(), after.state(), why)));
    }

    private static String shortened(String words) {
        String line = words.replaceAll("\\p{Cntrl}+", " ").strip();
        return line.length() <= LONGEST_WORDS ? line : line.substring(0, LONGEST_WORDS - 3) + "...";
    }
}
