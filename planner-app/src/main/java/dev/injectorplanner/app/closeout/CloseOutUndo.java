package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.Done;
import dev.injectorplanner.app.closeout.CloseOut.Taken;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.stock.OnHandStock;
import dev.injectorplanner.app.stock.StockInjectorRows;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.FittedInjector;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes back what a close-out wrote, so that its correction starts from where it started. Its own rows stay. */
final class CloseOutUndo {
    private final Connection connection;
    private final StoreWriter writer;

    CloseOutUndo(Connection connection, StoreWriter writer) {
        this.connection = connection;
        this.writer = writer;
    }

    void undo(CloseOut made) throws SQLException {
        List<FittedInjector> injectors = writer.ofTrucks(FittedInjector.class, List.of(made.truck()));
        List<FittedInjector> goingOn = new ArrayList<>();
        for (Done done : made.cylinders()) {
            if (done.fitted()) {
                stillThere(made, done, injectors);
                StoreSql.update(
                        connection,
                        "delete from injector where truck = ? and cylinder = ? and fitted_on = ? and fitting between ? and ?",
                        made.truck(),
                        done.cylinder(),
                        made.doneOn(),
                        done.failedFirst() == null ? done.fitting() : done.fitting() - 1,
                        done.fitting());
                injectors.stream()
                        .filter(row -> at(row, done.cylinder(), done.oldFittedOn(), done.oldFitting()))
                        .map(Lives::goingOn)
                        .forEach(goingOn::add);
            }
        }
        if (!goingOn.isEmpty()) {
            writer.merge(FittedInjector.class, goingOn, true);
        }
        if (made.readAt() != null) {
            StoreSql.update(
                    connection, "delete from reading where truck = ? and taken_at = ?", made.truck(), made.readAt());
            StoreSql.update(
                    connection,
                    "delete from cylinder_test where truck = ? and tested_at = ?",
                    made.truck(),
                    made.readAt());
        }
        OnHandStock stock = new OnHandStock(writer, made.depot());
        for (Taken taken : made.used()) {
            stock.add(taken.part(), taken.taken());
        }
        StockInjectorRows.putBack(connection, made.id());
        AnsweredByJob.takeBack(connection, made);
        new CloseOutEnded(connection, made.id()).giveBack(made);
    }

    private static void stillThere(CloseOut made, Done done, List<FittedInjector> injectors) {
        boolean there = injectors.stream()
                .anyMatch(row -> at(row, done.cylinder(), made.doneOn(), done.fitting()) && row.removedOn() == null);
        if (!there) {
            throw RefusedEntryException.of(
                    "c" + done.cylinder() + ".serial",
                    "Cylinder " + done.cylinder() + ": the injector of " + made.doneOn()
                            + " is no longer fitted, or was changed by a file",
                    "correct the later entries first");
        }
    }

    private static boolean at(FittedInjector row, int cylinder, @Nullable LocalDate fittedOn, int fitting) {
        return row.cylinder() == cylinder && row.fittedOn().equals(fittedOn) && row.fitting() == fitting;
    }
}
