package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobRows;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Repair;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Faults whose diagnosis ended in a replacement: when its job is closed out with every injector that failed replaced, that is
 * the repair which answers them. It names their codes, since a fault of the day of fitting counts as one after it otherwise.
 */
final class AnsweredByJob {
    private AnsweredByJob() {}

    static void write(Connection connection, StoreWriter writer, CloseOut made, String by) throws SQLException {
        Optional<BayJob> job = BayJobRows.ofCloseOut(connection, made.id());
        if (job.isEmpty()
                || job.get().diagnosed().isEmpty()
                || !made.fitted().containsAll(job.get().failed())) {
            return;
        }
        String cylinders = made.fitted().stream().map(String::valueOf).collect(Collectors.joining(" "));
        String what = "replaced after diagnosis: " + (made.fitted().size() == 1 ? "cylinder " : "cylinders ")
                + cylinders + " (" + String.join(", ", job.get().diagnosed()) + ")" + ending(made);
        Repair repair = new Repair(made.truck(), made.doneOn(), made.odometerKm(), what, null, "", by);
        writer.merge(Repair.class, List.of(repair), true);
    }

    /** A close-out that is corrected or voided answers nothing any more. */
    static void takeBack(Connection connection, CloseOut made) throws SQLException {
        StoreSql.update(
                connection,
                "delete from repair where truck = ? and what like ?",
                made.truck(),
                "replaced after diagnosis: %" + ending(made));
    }

    private static String ending(CloseOut made) {
        return ", close-out " + made.id();
    }
}
