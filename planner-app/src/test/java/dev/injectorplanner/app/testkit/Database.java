package dev.injectorplanner.app.testkit;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Depot;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/** Both databases, each opened once for all tests, with {@link OneOfEach} and a second depot in it. */
public enum Database {
    HSQLDB,
    POSTGRESQL;

    public static final String NORTH = "North";
    public static final String SOUTH = "South";

    private static final List<String> TABLES =
            List.of("alert_event", "alert", "mail_attachment", "mail_message", "mail_recipient", "calendar_feed");

    private Store store;

    /** The store, without alerts, mail and calendars. */
    public synchronized Store empty() {
        if (store == null) {
            store = Store.open(settings());
            try (StoreWriter writer = store.writer()) {
                FleetMerge.into(writer, OneOfEach.fleet());
                writer.merge(Depot.class, List.of(south()), true);
                writer.commit();
            }
        }
        try (Connection connection = store.dataSource().getConnection();
                var statement = connection.createStatement()) {
            for (String table : TABLES) {
                statement.executeUpdate("delete from " + table);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return store;
    }

    private StoreSettings settings() {
        if (this == HSQLDB) {
            return new StoreSettings("jdbc:hsqldb:mem:services;hsqldb.tx=mvcc", "SA", "");
        }
        try {
            EmbeddedPostgres postgres = EmbeddedPostgres.start();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(postgres)));
            return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void stop(EmbeddedPostgres postgres) {
        try {
            postgres.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Depot south() {
        Depot north = OneOfEach.fleet().depots().get(0);
        return new Depot(
                SOUTH, "South yard", north.timeZone(), 1, 8, north.workDays(), BigDecimal.TEN, BigDecimal.TEN, 0);
    }
}
