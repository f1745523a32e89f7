package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobRows;
import dev.injectorplanner.app.closeout.CloseOut.Done;
import dev.injectorplanner.app.closeout.CloseOut.ReadBack;
import dev.injectorplanner.app.closeout.CloseOut.Taken;
import dev.injectorplanner.app.closeout.CloseOutEntry.Cylinder;
import dev.injectorplanner.app.closeout.CloseOutEntry.Used;
import dev.injectorplanner.app.closeout.NewInjector.FailedFirst;
import dev.injectorplanner.app.stock.OnHandStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.app.store.StockCause;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.TaskDone;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Writes what a close-out means: lives end and begin, the meters are read, stock goes down, the visit is over. */
final class CloseOutWork {
    private final Connection connection;
    private final StoreWriter writer;
    private final Instant at;
    private final String by;

    CloseOutWork(Connection connection, StoreWriter writer, Instant at, String by) {
        this.connection = connection;
        this.writer = writer;
        this.at = at;
        this.by = by;
    }

    /**
     * @param before the version that it corrects, already undone, or null
     * @param why why it is corrected, or empty
     */
    CloseOut write(Checked checked, @Nullable CloseOut before, String why) throws SQLException {
        writer.because(
                new StockCause(StockCause.Kind.USED, "truck " + checked.truck().truck(), "visit closed out", at, by));
        CloseOutRows rows = new CloseOutRows(connection);
        long id = rows.newId();
        boolean read = checked.entry().odometerKm() != null || checked.entry().engineHours() != null;
        lives(checked);
        if (read) {
            reading(checked);
        }
        tests(checked);
        List<String> remarks = new ArrayList<>();
        List<Taken> taken = stock(checked, remarks);
        CloseOut made = made(id, checked, before, why, read, remarks, taken);
        rows.insert(made);
        if (before == null) {
            closeJob(checked.entry(), made);
        } else {
            BayJobRows.corrected(connection, before.id(), id);
        }
        AnsweredByJob.write(connection, writer, made, by);
        CloseOutEnded ended = new CloseOutEnded(connection, id);
        for (NewInjector injector : checked.injectors()) {
            shelf(checked, injector, id, ended);
        }
        over(checked, ended);
        tasks(checked, ended);
        CloseOutNotes.closedOut(connection, by, before, made);
        return made;
    }

    /** The open job ends that the entry names; of an entry that names neither job nor week, the one whose cylinders it did. */
    private void closeJob(CloseOutEntry entry, CloseOut made) throws SQLException {
        Optional<BayJob> open = BayJobRows.open(connection, made.truck());
        if (open.isEmpty()) {
            return;
        }
        Long named = entry.job();
        boolean its = named == null
                ? entry.week() == null && !Collections.disjoint(open.get().cylinders(), made.fitted())
                : named == open.get().id();
        if (its) {
            BayJobRows.closedOut(connection, open.get().id(), made.id(), at, by);
        }
    }

    private void lives(Checked checked) {
        CloseOutEntry entry = checked.entry();
        List<FittedInjector> rows = new ArrayList<>();
        for (NewInjector injector : checked.injectors()) {
            FittedInjector old = injector.old();
            if (old != null) {
                rows.add(Lives.ended(old, checked.doneOn(), entry.odometerKm(), entry.engineHours(), injector.found()));
            }
            FailedFirst failed = injector.failedFirst();
            if (failed != null) {
                Origin origin = failed.shelf() == null
                        ? injector.origin()
                        : failed.shelf().origin();
                FittedInjector first =
                        fitted(checked, injector, failed.serial(), code(failed), origin, injector.fitting() - 1);
                rows.add(Lives.ended(first, checked.doneOn(), entry.odometerKm(), entry.engineHours(), Found.FAILED));
            }
            rows.add(fitted(
                    checked, injector, injector.serial(), injector.code(), injector.origin(), injector.fitting()));
        }
        if (!rows.isEmpty()) {
            writer.merge(FittedInjector.class, rows, true);
        }
    }

    private static @Nullable String code(FailedFirst failed) {
        return failed.shelf() == null ? null : failed.shelf().code();
    }

    private static FittedInjector fitted(
            Checked checked, NewInjector injector, String serial, @Nullable String code, Origin origin, int fitting) {
        CloseOutEntry entry = checked.entry();
        return new FittedInjector(
                entry.truck(),
                injector.cylinder(),
                injector.part().part(),
                serial,
                code,
                origin,
                checked.doneOn(),
                entry.odometerKm(),
                entry.engineHours(),
                null,
                null,
                null,
                null,
                fitting);
    }

    private void reading(Checked checked) {
        CloseOutEntry entry = checked.entry();
        Reading reading = new Reading(
                entry.truck(), checked.moment(), entry.odometerKm(), entry.engineHours(), entry.meterReplaced());
        writer.merge(Reading.class, List.of(reading), true);
    }

    private void tests(Checked checked) {
        List<CylinderTest> tests = checked.entry().tests().stream()
                .map(test -> EntryCheck.test(checked.truck().truck(), test, checked.moment()))
                .toList();
        if (!tests.isEmpty()) {
            writer.merge(CylinderTest.class, tests, true);
        }
    }

    private List<Taken> stock(Checked checked, List<String> remarks) {
        Map<String, Double> used = new TreeMap<>();
        checked.injectors()
                .forEach(injector ->
                        used.merge(injector.part().part(), injector.failedFirst() == null ? 1.0 : 2.0, Double::sum));
        for (Used each : checked.entry().used()) {
            if (each.pieces() > 0) {
                used.merge(each.part(), each.pieces(), Double::sum);
            }
        }
        OnHandStock stock = new OnHandStock(writer, checked.truck().depot());
        List<Taken> taken = new ArrayList<>();
        used.forEach((part, pieces) -> {
            double there = stock.take(part, pieces);
            taken.add(new Taken(part, pieces, there));
            if (there < pieces) {
                remarks.add("Stock of " + part + " had " + Require.plain(there) + ", and " + Require.plain(pieces)
                        + " were used: count the stock.");
            }
        });
        return taken;
    }

    private void shelf(Checked checked, NewInjector injector, long id, CloseOutEnded ended) throws SQLException {
        StockInjector shelf = injector.shelf();
        FailedFirst failed = injector.failedFirst();
        StockInjector tried = failed == null ? null : failed.shelf();
        String truck = checked.truck().truck();
        for (StockInjector meant : StockInjectorRows.boundTo(connection, truck)) {
            boolean taken = shelf != null && meant.id() == shelf.id() || tried != null && meant.id() == tried.id();
            if (!taken && meant.isFor(truck, injector.cylinder())) {
                ended.kitPlace(meant);
            }
        }
        if (shelf != null) {
            StockInjectorRows.gone(connection, shelf.id(), at, by, id);
        }
        if (tried != null) {
            StockInjectorRows.gone(connection, tried.id(), at, by, id);
        }
    }

    /** The visit is over: it is confirmed no more, and a pin to its week holds no more. */
    private static void over(Checked checked, CloseOutEnded ended) throws SQLException {
        String truck = checked.truck().truck();
        String week = checked.entry().week();
        boolean fitted = checked.injectors().stream().findAny().isPresent();
        ended.confirmation(truck, fitted ? null : week); // a test beside the main visit leaves that one confirmed
        if (week != null) {
            ended.pin(truck, week);
        }
    }

    /** Services count from this day on; one that a file notes on the very day stays as the file says. */
    private void tasks(Checked checked, CloseOutEnded ended) throws SQLException {
        CloseOutEntry entry = checked.entry();
        List<TaskDone> there = writer.ofTrucks(TaskDone.class, List.of(entry.truck()));
        List<TaskDone> rows = new ArrayList<>();
        for (String task : entry.tasks()) {
            boolean noted = there.stream()
                    .anyMatch(row -> row.task().equals(task) && row.doneOn().equals(checked.doneOn()));
            if (!noted) {
                ended.task(task);
                rows.add(new TaskDone(entry.truck(), task, checked.doneOn(), entry.odometerKm(), entry.engineHours()));
            }
        }
        if (!rows.isEmpty()) {
            writer.merge(TaskDone.class, rows, true);
        }
    }

    private CloseOut made(
            long id,
            Checked checked,
            @Nullable CloseOut before,
            String why,
            boolean read,
            List<String> remarks,
            List<Taken> taken) {
        CloseOutEntry entry = checked.entry();
        return new CloseOut(
                id,
                entry.formKey(),
                entry.truck(),
                checked.truck().depot(),
                entry.week(),
                checked.doneOn(),
                before == null ? 1 : before.version() + 1,
                before == null ? null : before.id(),
                null,
                why.strip(),
                checked.labourHours(),
                entry.odometerKm(),
                entry.engineHours(),
                entry.meterReplaced(),
                entry.extras().strip(),
                entry.tasks(),
                entry.recheckOn(),
                read || !entry.tests().isEmpty() ? checked.moment() : null,
                remarks,
                before == null ? at : before.closedAt(),
                at,
                by,
                done(checked),
                taken,
                entry.tests(),
                checked.moment(),
                null);
    }

    private static List<Done> done(Checked checked) {
        List<Done> done = new ArrayList<>();
        checked.injectors().forEach(injector -> done.add(done(injector)));
        for (Cylinder each : checked.entry().cylinders()) {
            if (!each.fitted()) {
                done.add(new Done(
                        each.cylinder(),
                        false,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        false,
                        ReadBack.NONE,
                        each.reason().strip(),
                        1,
                        1,
                        null));
            }
        }
        done.sort(java.util.Comparator.comparing(Done::cylinder));
        return done;
    }

    private static Done done(NewInjector injector) {
        FittedInjector old = injector.old();
        String code = injector.code();
        return new Done(
                injector.cylinder(),
                true,
                injector.found(),
                old == null ? null : old.serial(),
                old == null ? null : old.fittedOn(),
                injector.part().part(),
                injector.serial(),
                code.isEmpty() ? null : code,
                injector.origin(),
                !code.isEmpty(),
                injector.readBack(),
                "",
                injector.fitting(),
                old == null ? 1 : old.fitting(),
                injector.failedFirst() == null ? null : injector.failedFirst().serial());
    }
}
