package dev.injectorplanner.app.diagnosis;

import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.diagnosis.DiagnosisStep;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Steps of diagnoses that are open, as they were found; ended together with the repair, or with "no fault found". */
public final class LookBook {
    private static final int LONGEST = 500;

    private final Store store;

    public LookBook(Store store) {
        this.store = store;
    }

    /** What was found so far of an open diagnosis, by step; the newest of each. */
    public Map<String, Look> open(String truck, DiagnosisKind kind) {
        return store.inJointTransaction((connection, writer) -> open(connection, truck, kind));
    }

    private static Map<String, Look> open(Connection connection, String truck, DiagnosisKind kind) throws SQLException {
        Map<String, Look> looks = new LinkedHashMap<>();
        StoreSql.list(
                        connection,
                        "select step, state, found, seen_at, seen_by from bay_look"
                                + " where truck = ? and kind = ? and ended_at is null order by seen_at, id",
                        row -> new Look(
                                row.getString("step"),
                                Look.State.valueOf(row.getString("state")),
                                row.getString("found"),
                                StoreSql.moment(row, "seen_at"),
                                row.getString("seen_by")),
                        truck,
                        kind.name())
                .forEach(look -> looks.put(look.step(), look));
        return looks;
    }

    /**
     * Notes how steps were found; a step that stands as it did, or that its sender left as it was shown, is left alone: another
     * phone may have found it since.
     *
     * @param shown steps as they were shown to the sender; one that is missing counts as shown as it stands
     * @param form what it was sent with; a form that arrived before changes nothing
     * @return the steps as they stand now
     * @throws dev.injectorplanner.app.entry.RefusedEntryException where a remark is too long; fields are {@code found.KEY}
     */
    public Map<String, Look> note(
            String truck,
            DiagnosisKind kind,
            Map<String, Look> found,
            Map<String, Look> shown,
            LookForm form,
            Instant at,
            String by) {
        check(kind, found);
        return store.inJointTransaction((connection, writer) -> {
            StoreSql.update(connection, "update workshop_gate set turn = turn + 1 where id = 1");
            Map<String, Look> there = open(connection, truck, kind);
            if (form.did(connection).isPresent()) {
                return there;
            }
            if (!form.ends()) {
                form.arrived(connection, truck, kind, at);
            }
            List<Look> changed = kind.steps().stream()
                    .map(step -> found.get(step.key()))
                    .filter(Objects::nonNull)
                    .filter(look -> !isKept(there.get(look.step()), look))
                    .filter(look -> !shown.containsKey(look.step()) || !isKept(shown.get(look.step()), look))
                    .toList();
            insert(connection, truck, kind, changed, at, by);
            Map<String, Look> now = open(connection, truck, kind);
            if (!changed.isEmpty()) {
                AuditTrail.write(connection, at, by, "note a diagnosis", truck, words(kind, there), words(kind, now));
            }
            return now;
        });
    }

    private static void insert(
            Connection connection, String truck, DiagnosisKind kind, List<Look> looks, Instant at, String by)
            throws SQLException {
        long id = StoreSql.nextIds(connection, "bay_look_seq");
        for (Look look : looks) {
            StoreSql.update(
                    connection,
                    "insert into bay_look (id, truck, kind, step, state, found, seen_at, seen_by)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                    id++,
                    truck,
                    kind.name(),
                    look.step(),
                    look.state().name(),
                    look.found(),
                    at,
                    by);
        }
    }

    private static void check(DiagnosisKind kind, Map<String, Look> found) {
        EntryProblems problems = new EntryProblems();
        for (DiagnosisStep step : kind.steps()) {
            Look look = found.get(step.key());
            if (look != null) {
                problems.guarded("found." + step.key(), () -> Require.text(step.title(), look.found()));
                if (look.found().length() > LONGEST) {
                    problems.add(
                            "found." + step.key(),
                            step.title() + ": is too long",
                            "keep it to " + LONGEST + " characters");
                }
            }
        }
        problems.throwIfAny();
    }

    private static boolean isKept(@Nullable Look before, Look look) {
        return before == null
                ? look.state() == Look.State.NOT_LOOKED && look.found().isEmpty()
                : before.state() == look.state() && before.found().equals(look.found());
    }

    /** What a form did when it arrived before: how it ended the diagnosis, or empty text where it only noted steps. */
    public Optional<String> did(LookForm form) {
        return store.inJointTransaction((connection, writer) -> form.did(connection));
    }

    /** Ends an open diagnosis: its steps belong to what ended it. A form that arrived before ends nothing. */
    public void end(String truck, DiagnosisKind kind, String how, LookForm form, Instant at, String by) {
        store.inJointTransaction((connection, writer) -> {
            StoreSql.update(connection, "update workshop_gate set turn = turn + 1 where id = 1");
            if (form.did(connection).isEmpty()) {
                form.arrived(connection, truck, kind, at);
                end(connection, truck, kind, how, at, by);
            }
            return true;
        });
    }

    /** The same within a transaction. */
    public static void end(Connection connection, String truck, DiagnosisKind kind, String how, Instant at, String by)
            throws SQLException {
        StoreSql.update(
                connection,
                "update bay_look set ended_at = ? where truck = ? and kind = ? and ended_at is null",
                at,
                truck,
                kind.name());
        AuditTrail.write(connection, at, by, "end a diagnosis", truck, kind.words(), how);
    }

    /** {@code fuel filter: in order, 0.2 bar; pump: cause found}. */
    public static String words(DiagnosisKind kind, Map<String, Look> looks) {
        List<String> words = new ArrayList<>();
        for (DiagnosisStep step : kind.steps()) {
            Look look = looks.get(step.key());
            if (look != null && look.state() != Look.State.NOT_LOOKED) {
                words.add(step.title() + ": " + look.state().words()
                        + (look.found().isEmpty() ? "" : ", " + look.found()));
            }
        }
        return String.join("; ", words);
    }
}
