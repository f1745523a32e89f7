package dev.injectorplanner.app.people;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** Who changed what, when. Entries are added and read; nothing here, or elsewhere, changes or removes one. */
public final class AuditTrail {
    private static final String COLUMNS =
            "select id, happened_at, who, what, subject, value_before, value_after from audit_entry";
    private static final int MOST_WHO = 100;
    private static final int MOST_WHAT = 60;
    private static final int MOST_SUBJECT = 300;
    private static final int MOST_VALUE = 10_000;
    private static final int BLOCK = 1_000;

    private final StoreSql sql;
    private final InstantSource clock;

    public AuditTrail(DataSource store) {
        this(store, InstantSource.system());
    }

    AuditTrail(DataSource store, InstantSource clock) {
        this.sql = new StoreSql(store);
        this.clock = clock;
    }

    /**
     * Notes a change, as of now. Longer texts than the store takes are cut, with a mark.
     *
     * @param who a person's name, a token's, or that of who types a command
     * @param what what was done, such as {@code pin a truck}
     * @param subject what it was done to
     * @param before what stood there, or empty
     * @param after the current value, or empty
     */
    public void record(String who, String what, String subject, String before, String after) {
        sql.inTransaction(connection -> {
            insert(connection, clock.instant(), null, who, what, subject, before, after);
            return true;
        });
    }

    /**
     * As above, within a transaction: kept with the change itself, or not at all. Longer texts are cut, with a mark.
     *
     * @param at when it happened by the clock of whoever asks, such as the demo's day; the trail has one clock, the machine's, so
     *     that its entries stand in the order in which they were made
     */
    public static void write(
            Connection connection, Instant at, String who, String what, String subject, String before, String after)
            throws SQLException {
        insert(connection, Instant.now(), null, who, what, subject, before, after);
    }

    /** As above, of one truck, by whose name the entry can be found. */
    public static void writeOfTruck(
            Connection connection, String truck, String who, String what, String subject, String before, String after)
            throws SQLException {
        insert(connection, Instant.now(), truck, who, what, subject, before, after);
    }

    private static void insert(
            Connection connection,
            Instant at,
            @Nullable String truck,
            String who,
            String what,
            String subject,
            String before,
            String after)
            throws SQLException {
        StoreSql.update(
                connection,
                "insert into audit_entry (id, happened_at, who, what, subject, value_before, value_after, truck)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                StoreSql.nextIds(connection, "audit_entry_seq"),
                at,
                cut(who, MOST_WHO),
                cut(what, MOST_WHAT),
                cut(subject, MOST_SUBJECT),
                cut(before, MOST_VALUE),
                cut(after, MOST_VALUE),
                truck);
    }

    /** The database takes no zero character, and no more than its column holds. */
    private static String cut(String text, int most) {
        String clean = text.replace('\0', '?');
        return clean.length() <= most ? clean : clean.substring(0, most - 1) + "…";
    }

    /**
     * Entries before one, newest first.
     *
     * @param before number of the entry to start below; {@link Long#MAX_VALUE} for the newest
     * @param most how many at most
     */
    public List<AuditEntry> list(long before, int most) {
        return sql.inTransaction(connection -> StoreSql.list(
                connection, COLUMNS + " where id < ? order by id desc limit " + most, AuditTrail::entry, before));
    }

    /** The newest entry of what was done. */
    public Optional<AuditEntry> findNewest(String what) {
        return sql
                .inTransaction(connection -> StoreSql.list(
                        connection, COLUMNS + " where what = ? order by id desc limit 1", AuditTrail::entry, what))
                .stream()
                .findFirst();
    }

    /** Every entry, oldest first, a block at a time. */
    public void each(Consumer<AuditEntry> reader) {
        long last = 0;
        while (true) {
            long from = last;
            List<AuditEntry> block = sql.inTransaction(connection -> StoreSql.list(
                    connection, COLUMNS + " where id > ? order by id limit " + BLOCK, AuditTrail::entry, from));
            block.forEach(reader);
            if (block.size() < BLOCK) {
                return;
            }
            last = block.get(BLOCK - 1).id();
        }
    }

    private static AuditEntry entry(ResultSet row) throws SQLException {
        return new AuditEntry(
                row.getLong("id"),
                StoreSql.moment(row, "happened_at"),
                row.getString("who"),
                row.getString("what"),
                row.getString("subject"),
                row.getString("value_before"),
                row.getString("value_after"));
    }
}
