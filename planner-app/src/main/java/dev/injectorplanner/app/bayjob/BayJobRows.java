package dev.injectorplanner.app.bayjob;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Rows of jobs begun at the truck. */
public final class BayJobRows {
    private static final String COLUMNS =
            "select id, truck, depot, failed, cylinders, started_at, started_by, why from bay_job where ";

    private BayJobRows() {}

    /** The open job of a truck. */
    public static Optional<BayJob> open(Connection connection, String truck) throws SQLException {
        return StoreSql.list(
                        connection, COLUMNS + "truck = ? and ended_at is null order by id", BayJobRows::read, truck)
                .stream()
                .findFirst();
    }

    static List<BayJob> openOf(Connection connection, String depot) throws SQLException {
        return StoreSql.list(
                connection,
                COLUMNS + "depot = ? and ended_at is null order by started_at, id",
                BayJobRows::read,
                depot);
    }

    static Optional<BayJob> byKey(Connection connection, String formKey) throws SQLException {
        return StoreSql.list(connection, COLUMNS + "form_key = ?", BayJobRows::read, formKey).stream()
                .findFirst();
    }

    /** The job that a close-out ended. */
    public static Optional<BayJob> ofCloseOut(Connection connection, long closeOut) throws SQLException {
        return StoreSql.list(connection, COLUMNS + "close_out = ?", BayJobRows::read, closeOut).stream()
                .findFirst();
    }

    static boolean isEnded(Connection connection, String truck, long id) throws SQLException {
        return !StoreSql.list(
                        connection,
                        COLUMNS + "id = ? and truck = ? and ended_at is not null",
                        BayJobRows::read,
                        id,
                        truck)
                .isEmpty();
    }

    /** Ends an open job with what closed it out. */
    public static void closedOut(Connection connection, long job, long closeOut, Instant at, String by)
            throws SQLException {
        StoreSql.update(
                connection,
                "update bay_job set ended_at = ?, ended_by = ?, close_out = ? where id = ? and ended_at is null",
                at,
                by,
                closeOut,
                job);
    }

    /** Opens a job again whose close-out was voided; one that was begun since stays the truck's only open one. */
    public static void openAgain(Connection connection, String truck, long closeOut) throws SQLException {
        if (open(connection, truck).isEmpty()) {
            StoreSql.update(
                    connection,
                    "update bay_job set ended_at = null, ended_by = null, close_out = null where close_out = ?",
                    closeOut);
        }
    }

    /** The newest version stands for the job. */
    public static void corrected(Connection connection, long before, long now) throws SQLException {
        StoreSql.update(connection, "update bay_job set close_out = ? where close_out = ?", now, before);
    }

    static void insert(Connection connection, BayJob job, String formKey) throws SQLException {
        StoreSql.update(
                connection,
                "insert into bay_job (id, form_key, truck, depot, failed, cylinders, started_at, started_by, why)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                job.id(),
                formKey,
                job.truck(),
                job.depot(),
                words(job.failed()),
                words(job.cylinders()),
                job.startedAt(),
                job.startedBy(),
                job.why());
    }

    static void end(Connection connection, long id, Instant at, String by) throws SQLException {
        StoreSql.update(
                connection,
                "update bay_job set ended_at = ?, ended_by = ? where id = ? and ended_at is null",
                at,
                by,
                id);
    }

    static String words(Collection<Integer> cylinders) {
        return cylinders.stream().sorted().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static List<Integer> numbers(String words) {
        return Arrays.stream(words.split(" "))
                .filter(each -> !each.isEmpty())
                .map(Integer::valueOf)
                .toList();
    }

    private static BayJob read(ResultSet row) throws SQLException {
        return new BayJob(
                row.getLong("id"),
                row.getString("truck"),
                row.getString("depot"),
                numbers(row.getString("failed")),
                numbers(row.getString("cylinders")),
                StoreSql.moment(row, "started_at"),
                row.getString("started_by"),
                row.getString("why"));
    }
}
