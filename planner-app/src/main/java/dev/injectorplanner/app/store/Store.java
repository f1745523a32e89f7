package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Function;
import javax.sql.DataSource;
import org.hibernate.SessionFactory;
import org.hibernate.StatelessSession;
import org.jspecify.annotations.Nullable;

/** The open store: one pool, a schema at its newest version, and Hibernate on top. */
public final class Store implements AutoCloseable {
    private static final String WATCH_SECONDS = "2";

    private final StoreSettings settings;
    private final StorePools pool;
    private final SessionFactory sessions;

    Store(StoreSettings settings, StorePools pool, SessionFactory sessions) {
        this.settings = settings;
        this.pool = pool;
        this.sessions = sessions;
    }

    /**
     * Opens the store, and makes or upgrades its schema where needed.
     *
     * @throws StoreException in words, where it is held by another process, cannot be reached, or is newer than this
     *     program
     */
    public static Store open(StoreSettings settings) {
        return open(settings, List.of());
    }

    /**
     * As above, with the entities of subjects that keep their own tables.
     *
     * @param entities their classes
     */
    public static Store open(StoreSettings settings, List<Class<?>> entities) {
        return StoreOpening.open(settings, entities);
    }

    public DataSource dataSource() {
        return pool;
    }

    /** Does something in a transaction of its own: all of it is kept, or, where it throws, nothing. */
    public <T> T inTransaction(Function<StatelessSession, T> work) {
        T done = sessions.fromStatelessTransaction(session -> {
            T result = work.apply(session);
            StorePools.requireRoom(pool);
            return result;
        });
        StorePools.committed(pool);
        return done;
    }

    /** Work in SQL on tables of one's own and, through the writer, on the fleet's rows. */
    public interface JointWork<T extends @Nullable Object> {
        T in(Connection connection, StoreWriter writer) throws SQLException;
    }

    /** Does such work in one transaction: all of it is kept, or, where it throws, nothing. */
    public <T extends @Nullable Object> T inJointTransaction(JointWork<T> work) {
        try (StoreWriter writer = writer()) {
            T result = writer.onConnection(connection -> work.in(connection, writer));
            writer.commit();
            return result;
        }
    }

    /** Whether several processes may share it: a PostgreSQL database, not a folder. */
    public boolean isShared() {
        return settings.isPostgres();
    }

    /** A connection outside the pools, for whoever watches the store. */
    public Connection connectDirectly() throws SQLException {
        Properties properties = new Properties();
        properties.setProperty("user", settings.user());
        properties.setProperty("password", settings.password());
        if (settings.isPostgres()) {
            properties.setProperty("connectTimeout", WATCH_SECONDS);
            properties.setProperty("socketTimeout", WATCH_SECONDS);
            properties.setProperty("loginTimeout", WATCH_SECONDS);
        }
        return DriverManager.getConnection(settings.url(), properties);
    }

    /** The folder of an embedded store. */
    public Optional<Path> findFolder() {
        return settings.isEmbedded()
                ? Optional.ofNullable(Path.of(settings.place()).getParent())
                : Optional.empty();
    }

    /** How a shared database is backed up and restored; empty for an embedded store. */
    public Optional<DatabaseTools> findTools() {
        return settings.isPostgres() ? Optional.of(DatabaseTools.of(settings)) : Optional.empty();
    }

    /** How many depots there are. */
    public long countDepots() {
        return inTransaction(session -> session.createSelectionQuery("select count(*) from DepotRow", Long.class)
                .getSingleResult());
    }

    /** The number of the injector row that came last; 0 where there is none. */
    public long newestInjector() {
        return inTransaction(session ->
                session
                        .createSelectionQuery("select max(i.id) from FittedInjectorRow i", Long.class)
                        .getResultList()
                        .stream()
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(0L));
    }

    /** Grows with every change of the fleet's rows that this process commits. */
    public long changes() {
        return pool.changes();
    }

    /** Statements that Hibernate prepared since it was first asked. */
    public long statements() {
        sessions.getStatistics().setStatisticsEnabled(true);
        return sessions.getStatistics().getPrepareStatementCount();
    }

    /** The whole fleet. */
    public FleetSnapshot snapshot() {
        return sessions.fromStatelessTransaction(session -> new SnapshotReader(session, null).read());
    }

    /** One depot's trucks with all that concerns them; nothing where there is no such depot. */
    public Optional<FleetSnapshot> findSnapshot(String depot) {
        return sessions.fromStatelessTransaction(session -> {
            FleetSnapshot snapshot = new SnapshotReader(session, depot).read();
            return snapshot.depots().isEmpty() ? Optional.empty() : Optional.of(snapshot);
        });
    }

    /** Stock of all depots but one, and the ways from them to it. */
    public Elsewhere elsewhere(String depot) {
        return inTransaction(session -> new Elsewhere(
                session.createSelectionQuery("select r.depot from DepotRow r where r.depot <> :depot", String.class)
                        .setParameter("depot", depot)
                        .getResultList(),
                session
                        .createSelectionQuery(
                                "from StockLineRow r where r.depot <> :depot and r.onHand > 0", StockLineRow.class)
                        .setParameter("depot", depot)
                        .getResultList()
                        .stream()
                        .map(StockLineRow::row)
                        .toList(),
                session
                        .createSelectionQuery("from TransferRow r where r.to = :depot", TransferRow.class)
                        .setParameter("depot", depot)
                        .getResultList()
                        .stream()
                        .map(TransferRow::row)
                        .toList()));
    }

    /** Starts writing: everything goes through the load's transactions. */
    public StoreWriter writer() {
        return new StoreWriter(sessions, pool);
    }

    @Override
    public void close() {
        sessions.close();
        pool.close();
        if (settings.isEmbedded()) { // else it keeps its redo log and reads it again at the next start
            StoreUpgrade.shutDown(settings);
        }
        pool.giveUp();
    }
}
