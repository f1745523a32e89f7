package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.closeout.CloseOut.Done;
import dev.injectorplanner.app.closeout.CloseOut.ReadBack;
import dev.injectorplanner.app.closeout.CloseOut.Taken;
import dev.injectorplanner.app.closeout.CloseOut.Voided;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.TestKind;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Rows of visits that were closed out. */
final class CloseOutRows {
    private static final String SELECT =
            "select c.*, (select l.id from close_out l where l.corrects = c.id) as later" + " from close_out c where ";

    private final Connection connection;

    CloseOutRows(Connection connection) {
        this.connection = connection;
    }

    Optional<CloseOut> find(long id) throws SQLException {
        return list("c.id = ?", id).stream().findFirst();
    }

    Optional<CloseOut> findByKey(String formKey) throws SQLException {
        return list("c.form_key = ?", formKey).stream().findFirst();
    }

    /** All versions of a truck's, the newest first. */
    List<CloseOut> ofTruck(String truck) throws SQLException {
        return list("c.truck = ? order by c.made_at desc, c.id desc", truck);
    }

    /** A depot's since a moment, the newest first. */
    List<CloseOut> since(String depot, Instant moment) throws SQLException {
        return list(
                "c.depot = ? and c.closed_at >= ? and c.voided_at is null order by c.made_at desc, c.id desc",
                depot,
                moment);
    }

    private List<CloseOut> list(String where, Object... values) throws SQLException {
        List<CloseOut> found = new ArrayList<>();
        for (CloseOut bare : StoreSql.list(connection, SELECT + where, CloseOutRows::bare, values)) {
            found.add(whole(bare));
        }
        return found;
    }

    private static CloseOut bare(ResultSet row) throws SQLException {
        return new CloseOut(
                row.getLong("id"),
                row.getString("form_key"),
                row.getString("truck"),
                row.getString("depot"),
                row.getString("week"),
                row.getObject("done_on", LocalDate.class),
                row.getInt("version"),
                row.getObject("corrects", Long.class),
                row.getObject("later", Long.class),
                row.getString("why"),
                row.getDouble("labour_hours"),
                row.getObject("odometer_km", Double.class),
                row.getObject("engine_hours", Double.class),
                row.getBoolean("meter_replaced"),
                row.getString("extras"),
                lines(row.getString("tasks")),
                row.getObject("recheck_on", LocalDate.class),
                StoreSql.instant(row, "read_at"),
                lines(row.getString("remarks")),
                StoreSql.moment(row, "closed_at"),
                StoreSql.moment(row, "made_at"),
                row.getString("made_by"),
                List.of(),
                List.of(),
                List.of(),
                finished(row),
                voided(row));
    }

    /** Close-outs of earlier versions of the program know the moment of their reading, or of their entry. */
    private static Instant finished(ResultSet row) throws SQLException {
        Instant finished = StoreSql.instant(row, "finished_at");
        Instant read = StoreSql.instant(row, "read_at");
        return finished != null ? finished : read != null ? read : StoreSql.moment(row, "closed_at");
    }

    private static @Nullable Voided voided(ResultSet row) throws SQLException {
        Instant at = StoreSql.instant(row, "voided_at");
        return at == null ? null : new Voided(at, row.getString("voided_by"), row.getString("void_reason"));
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split("\n", -1));
    }

    private CloseOut whole(CloseOut bare) throws SQLException {
        List<Done> cylinders = StoreSql.list(
                connection,
                "select * from close_out_cylinder where close_out = ? order by cylinder",
                CloseOutRows::done,
                bare.id());
        List<Taken> used = StoreSql.list(
                connection,
                "select part, used, taken from close_out_part where close_out = ? order by part",
                row -> new Taken(row.getString(1), row.getDouble(2), row.getDouble(3)),
                bare.id());
        List<CloseOutEntry.Test> tests = StoreSql.list(
                connection,
                "select * from close_out_test where close_out = ? order by test, cylinder",
                row -> new CloseOutEntry.Test(
                        row.getInt("cylinder"),
                        TestKind.valueOf(row.getString("test")),
                        row.getDouble("result"),
                        row.getString("unit"),
                        row.getString("engine_state")),
                bare.id());
        return with(bare, bare.id(), cylinders, used, tests);
    }

    static CloseOut with(
            CloseOut bare, long id, List<Done> cylinders, List<Taken> used, List<CloseOutEntry.Test> tests) {
        return new CloseOut(
                id,
                bare.formKey(),
                bare.truck(),
                bare.depot(),
                bare.week(),
                bare.doneOn(),
                bare.version(),
                bare.corrects(),
                bare.correctedBy(),
                bare.why(),
                bare.labourHours(),
                bare.odometerKm(),
                bare.engineHours(),
                bare.meterReplaced(),
                bare.extras(),
                bare.tasks(),
                bare.recheckOn(),
                bare.readAt(),
                bare.remarks(),
                bare.closedAt(),
                bare.madeAt(),
                bare.madeBy(),
                cylinders,
                used,
                tests,
                bare.finishedAt(),
                bare.voided());
    }

    private static Done done(ResultSet row) throws SQLException {
        String found = row.getString("found");
        String origin = row.getString("origin");
        return new Done(
                row.getInt("cylinder"),
                row.getBoolean("fitted"),
                found == null ? null : Found.valueOf(found),
                row.getString("old_serial"),
                row.getObject("old_fitted_on", LocalDate.class),
                row.getString("part"),
                row.getString("serial"),
                row.getString("calibration_code"),
                origin == null ? null : Origin.valueOf(origin),
                row.getBoolean("programmed"),
                ReadBack.valueOf(row.getString("read_back")),
                row.getString("reason"),
                row.getInt("fitting"),
                row.getInt("old_fitting"),
                row.getString("failed_first_serial"));
    }

    long newId() throws SQLException {
        return StoreSql.nextIds(connection, "close_out_seq");
    }

    void insert(CloseOut made) throws SQLException {
        StoreSql.update(
                connection,
                "insert into close_out (id, form_key, truck, depot, week, done_on, version, corrects, why, labour_hours,"
                        + " odometer_km, engine_hours, meter_replaced, extras, tasks, recheck_on, read_at, remarks,"
                        + " closed_at, made_at, made_by, finished_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,"
                        + " ?, ?, ?)",
                made.id(),
                made.formKey(),
                made.truck(),
                made.depot(),
                made.week(),
                made.doneOn(),
                made.version(),
                made.corrects(),
                made.why(),
                made.labourHours(),
                made.odometerKm(),
                made.engineHours(),
                made.meterReplaced(),
                made.extras(),
                String.join("\n", made.tasks()),
                made.recheckOn(),
                made.readAt(),
                String.join("\n", made.remarks()),
                made.closedAt(),
                made.madeAt(),
                made.madeBy(),
                made.finishedAt());
        for (Done done : made.cylinders()) {
            insert(made.id(), done);
        }
        insertUsedAndTests(made);
    }

    private void insertUsedAndTests(CloseOut made) throws SQLException {
        for (Taken taken : made.used()) {
            StoreSql.update(
                    connection,
                    "insert into close_out_part (close_out, part, used, taken) values (?, ?, ?, ?)",
                    made.id(),
                    taken.part(),
                    taken.used(),
                    taken.taken());
        }
        for (CloseOutEntry.Test test : made.tests()) {
            StoreSql.update(
                    connection,
                    "insert into close_out_test (close_out, cylinder, test, result, unit, engine_state)"
                            + " values (?, ?, ?, ?, ?, ?)",
                    made.id(),
                    test.cylinder(),
                    test.test().name(),
                    test.value(),
                    test.unit(),
                    test.engineState());
        }
    }

    private void insert(long id, Done done) throws SQLException {
        StoreSql.update(
                connection,
                "insert into close_out_cylinder (close_out, cylinder, fitted, found, old_serial, old_fitted_on, part,"
                        + " serial, calibration_code, origin, programmed, read_back, reason, fitting,"
                        + " old_fitting, failed_first_serial) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                id,
                done.cylinder(),
                done.fitted(),
                name(done.found()),
                done.oldSerial(),
                done.oldFittedOn(),
                done.part(),
                done.serial(),
                done.code(),
                name(done.origin()),
                done.programmed(),
                done.readBack().name(),
                done.reason(),
                done.fitting(),
                done.oldFitting(),
                done.failedFirst());
    }

    /** Notes that one means nothing any more. */
    void markVoid(long id, Voided voided) throws SQLException {
        StoreSql.update(
                connection,
                "update close_out set voided_at = ?, voided_by = ?, void_reason = ? where id = ?",
                voided.at(),
                voided.by(),
                voided.why(),
                id);
    }

    private static @Nullable String name(@Nullable Enum<?> value) {
        return value == null ? null : value.name();
    }
}
