package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.alert.ClearedAlerts;
import dev.injectorplanner.app.bayjob.BayJobRows;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Visits that are over: what was found, fitted, coded, checked and used, and what that means for the fleet's tables. */
public final class CloseOuts {
    private static final int LONGEST_KEY = 100;

    private final Store store;

    public CloseOuts(Store store) {
        this.store = store;
    }

    /**
     * What became of an entry.
     *
     * @param closeOut as it is kept
     * @param again true where its form had been kept before: nothing was changed
     */
    public record Saved(CloseOut closeOut, boolean again) {}

    /**
     * Closes a visit out: all of it is kept, or nothing. The same form a second time changes nothing.
     *
     * @param today today at the depot: nothing can have been done later
     * @throws RefusedEntryException with all that is wrong
     */
    public Saved close(CloseOutEntry entry, Instant at, String by, LocalDate today) {
        requireKey(entry);
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            Optional<CloseOut> there = kept(new CloseOutRows(connection), entry);
            if (there.isPresent()) {
                return new Saved(there.get(), true);
            }
            Checked checked = new EntryCheck(connection, writer, entry).check(at, today);
            return new Saved(new CloseOutWork(connection, writer, at, by).write(checked, null, ""), false);
        });
    }

    /** What is wrong with an entry, without keeping anything; empty where it could be kept. */
    public List<EntryProblem> check(CloseOutEntry entry, Instant at, LocalDate today) {
        return store.inJointTransaction((connection, writer) -> {
            try {
                new EntryCheck(connection, writer, entry).check(at, today);
                return List.<EntryProblem>of();
            } catch (RefusedEntryException e) {
                return e.problems();
            }
        });
    }

    /**
     * Corrects a close-out: what it wrote is taken back and the corrected entry takes its place, in one go. The earlier
     * version stays readable.
     *
     * @param why the reason, not empty
     * @throws RefusedEntryException with all that is wrong; also where another correction came first
     */
    public Saved correct(long id, CloseOutEntry entry, String why, Instant at, String by, LocalDate today) {
        return correct(id, entry, why, at, by, today, Set.of());
    }

    /**
     * Two injectors went into each other's cylinder: the record is corrected, all else of it stays. The same version sent a
     * second time changes nothing.
     *
     * @throws RefusedEntryException where nothing was fitted in one of them, or something was built on it
     */
    public Saved changeOver(CloseOut kept, int first, int second, Instant at, String by, LocalDate today) {
        CloseOutEntry entry = ChangedOver.of(kept, first, second);
        String why = "injectors of cylinders " + first + " and " + second + " were changed over";
        return correct(kept.id(), entry, why, at, by, today, Set.of(first, second));
    }

    /** @param freed cylinders whose injectors may go into others than their kit says */
    private Saved correct(
            long id, CloseOutEntry entry, String why, Instant at, String by, LocalDate today, Set<Integer> freed) {
        requireKey(entry);
        requireReason("reason for the correction", why);
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            CloseOutRows rows = new CloseOutRows(connection);
            Optional<CloseOut> there = kept(rows, entry);
            if (there.isPresent()) {
                return new Saved(there.get(), true);
            }
            CloseOut before = standing(rows, id, entry.truck());
            givenBack(writer, before, "corrected: " + why.strip(), at, by);
            new CloseOutUndo(connection, writer).undo(before);
            for (StockInjector each : StockInjectorRows.boundTo(connection, entry.truck())) {
                if (freed.contains(each.cylinder())) {
                    StockInjectorRows.release(connection, each.id());
                }
            }
            Checked checked = new EntryCheck(connection, writer, entry, before).check(at, today);
            CloseOut made = new CloseOutWork(connection, writer, at, by).write(checked, before, why);
            Set<Integer> changed = new TreeSet<>(before.fitted());
            if (made.doneOn().equals(before.doneOn())) {
                changed.removeAll(made.fitted());
            }
            refuseSentBack(connection, before, changed);
            ClearedAlerts.openAgain(connection, reopened(before, made.fitted(), at, by, "the close-out was corrected"));
            return new Saved(made, false);
        });
    }

    /**
     * Voids a close-out: all that it wrote is taken back, and it stays readable.
     *
     * @param why the reason, not empty
     * @throws RefusedEntryException where something was built on it, or it does not hold any more
     */
    public CloseOut voidIt(long id, String truck, String why, Instant at, String by) {
        requireReason("reason for voiding it", why);
        return store.inJointTransaction((connection, writer) -> {
            StockInjectorRows.takeTurn(connection);
            CloseOutRows rows = new CloseOutRows(connection);
            CloseOut before = standing(rows, id, truck);
            refuseSentBack(connection, before, new TreeSet<>(before.fitted()));
            givenBack(writer, before, "voided: " + why.strip(), at, by);
            new CloseOutUndo(connection, writer).undo(before);
            BayJobRows.openAgain(connection, truck, id);
            rows.markVoid(id, new CloseOut.Voided(at, by, why.strip()));
            ClearedAlerts.openAgain(connection, reopened(before, List.of(), at, by, "the close-out was voided"));
            CloseOutNotes.voided(connection, by, before, why.strip());
            return rows.find(id).orElseThrow();
        });
    }

    private static ClearedAlerts.ByWork reopened(
            CloseOut before, List<Integer> stillFitted, Instant at, String by, String why) {
        Set<Integer> cylinders = new TreeSet<>(before.fitted());
        cylinders.removeAll(stillFitted);
        Instant tested = before.tests().isEmpty() ? null : before.readAt();
        return new ClearedAlerts.ByWork(
                before.truck(), before.doneOn(), cylinders, stillFitted.isEmpty(), tested, at, by, why);
    }

    private static void givenBack(StoreWriter writer, CloseOut before, String why, Instant at, String by) {
        writer.because(new StockCause(StockCause.Kind.GIVEN_BACK, "truck " + before.truck(), why, at, by));
    }

    private static CloseOut standing(CloseOutRows rows, long id, String truck) throws java.sql.SQLException {
        return rows.find(id)
                .filter(row -> row.holds() && row.truck().equals(truck))
                .orElseThrow(() -> RefusedEntryException.of(
                        "why",
                        "this version of the close-out is out of date",
                        "open the newest version and correct that"));
    }

    /** A core or claim that was sent would have nothing behind it. */
    private static void refuseSentBack(Connection connection, CloseOut before, Set<Integer> cylinders)
            throws SQLException {
        for (CloseOut.Done done : before.cylinders()) {
            if (!done.fitted() || !cylinders.contains(done.cylinder())) {
                continue;
            }
            LocalDate old = done.oldFittedOn() == null ? before.doneOn() : done.oldFittedOn();
            for (String document : StoreSql.list(
                    connection,
                    "select document from unit_return where truck = ? and cylinder = ?"
                            + " and (fitted_on = ? or what = 'CLAIM' and fitted_on = ?)",
                    row -> row.getString(1),
                    before.truck(),
                    done.cylinder(),
                    before.doneOn(),
                    old)) {
                throw RefusedEntryException.of(
                        "why",
                        "cylinder " + done.cylinder() + ": its core or claim was sent with " + document,
                        "take it back first, on the page of cores and claims");
            }
        }
    }

    private static void requireReason(String what, String why) {
        EntryProblems problems = new EntryProblems();
        if (why.isBlank()) {
            problems.add("why", what + ": is empty", "enter what was wrong");
        }
        problems.guarded("why", () -> Require.text(what, why));
        problems.throwIfAny();
    }

    private static void requireKey(CloseOutEntry entry) {
        if (entry.formKey().isBlank() || entry.formKey().length() > LONGEST_KEY) {
            throw RefusedEntryException.of("formKey", "the form's key is missing or damaged", "open the page again");
        }
    }

    private static Optional<CloseOut> kept(CloseOutRows rows, CloseOutEntry entry) throws java.sql.SQLException {
        Optional<CloseOut> there = rows.findByKey(entry.formKey());
        if (there.isPresent() && !there.get().truck().equals(entry.truck())) {
            throw RefusedEntryException.of(
                    "formKey",
                    "this form was saved for truck " + there.get().truck(),
                    "open the page of truck " + entry.truck() + " again");
        }
        return there;
    }

    /** A truck's, all versions, the newest first: the record of what was fitted, coded and read back. */
    public List<CloseOut> ofTruck(String truck) {
        return store.inJointTransaction((connection, writer) -> new CloseOutRows(connection).ofTruck(truck));
    }

    /** One version. */
    public Optional<CloseOut> find(long id) {
        return store.inJointTransaction((connection, writer) -> new CloseOutRows(connection).find(id));
    }

    /** Those of a depot that hold, entered since a moment, the newest first. */
    public List<CloseOut> listSince(String depot, Instant moment) {
        return store.inJointTransaction((connection, writer) -> new CloseOutRows(connection)
                .since(depot, moment).stream().filter(CloseOut::holds).toList());
    }

    /**
     * Trucks of a depot that were closed out since a moment, with the newest that holds: their visits in a plan kept at
     * that moment are done.
     */
    public Map<String, CloseOut> since(String depot, Instant moment) {
        return store.inJointTransaction((connection, writer) -> {
            Map<String, CloseOut> byTruck = new HashMap<>();
            for (CloseOut each : new CloseOutRows(connection).since(depot, moment)) {
                if (each.holds()) {
                    byTruck.putIfAbsent(each.truck(), each);
                }
            }
            return byTruck;
        });
    }
}
