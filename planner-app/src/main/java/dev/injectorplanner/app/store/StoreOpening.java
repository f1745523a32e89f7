package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.hibernate.SessionFactory;
import org.hibernate.cfg.Configuration;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Opens a store: pool, schema, Hibernate. */
final class StoreOpening {
    /** Version of the newest migration; a test holds it against the files. */
    static final int NEWEST = 10;

    private static final int CONNECTIONS = 8;
    private static final Logger LOG = LoggerFactory.getLogger(StoreOpening.class);

    private StoreOpening() {}

    static Store open(StoreSettings settings, List<Class<?>> entities) {
        checkFolder(settings);
        HikariDataSource pool = pool(settings);
        try {
            int version = version(pool);
            if (version > NEWEST) {
                throw new StoreException(
                        "The store in " + settings + "has schema version " + version + ", but this program supports " + NEWEST
                                + ". Fix: use the newer program version that wrote it.",
                        new IllegalStateException());
            }
            boolean changed = version < NEWEST;
            if (changed) {
                migrate(pool, settings.isPostgres());
            }
            return new Store(settings, pool, hibernate(pool, changed, entities));
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    /** Says in words what the database would call a lock. */
    private static void checkFolder(StoreSettings settings) {
        if (!settings.isEmbedded()) {
            return;
        }
        Path folder = Path.of(settings.place()).getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new StoreException(
                    folder + " is not a folder and cannot be created. Fix: choose another with --data.", e);
        }
        if (!Files.isWritable(folder)) {
            throw new StoreException(
                    folder + " cannot be written to. Fix: choose another folder with --data.",
                    new IOException("not writable"));
        }
    }

    private static HikariDataSource pool(StoreSettings settings) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("planner");
        config.setJdbcUrl(settings.url());
        config.setUsername(settings.user());
        config.setPassword(settings.password());
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        return opened(settings, config);
    }

    /**
     * A process that was killed leaves a lock that counts as held for some ten seconds: waits for it to lapse before
     * believing that another process has the store.
     */
    private static HikariDataSource opened(StoreSettings settings, HikariConfig config) {
        LockWait wait = LockWait.begin(System::nanoTime);
        for (boolean first = true; ; first = false) {
            try {
                return new HikariDataSource(config);
            } catch (RuntimeException e) {
                if (!isHeld(e) || !wait.hasTimeForAnother() || !waitABit()) {
                    throw inWords(settings, e);
                }
                if (first) {
                    LOG.warn(
                            "The store in {} is held, or was left by a process that was stopped: waiting up to {} s"
                                    + " more",
                            settings,
                            wait.secondsLeft());
                }
            }
        }
    }

    private static boolean isHeld(RuntimeException e) {
        String text = messages(e);
        return text.contains("lock acquisition failure") || text.contains("LockFile");
    }

    /** False where this process is told to stop meanwhile. */
    private static boolean waitABit() {
        try {
            Thread.sleep(LockWait.PAUSE_MILLIS);
            return true;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static StoreException inWords(StoreSettings settings, RuntimeException e) {
        if (isHeld(e)) {
            return new StoreException(
                    "The store in " + settings + " is in use by another process. Fix: stop it (serve) first, or use"
                            + " its pages.",
                    e);
        }
        return new StoreException(
                "The store at " + settings + " cannot be opened: " + lastMessage(e)
                        + ". Fix: check the address, the folder's permissions, user and password.",
                e);
    }

    private static String messages(Throwable e) {
        StringBuilder all = new StringBuilder();
        for (Throwable t = e; t != null; t = t.getCause()) {
            all.append(t.getMessage()).append('\n');
        }
        return all.toString();
    }

    private static @Nullable String lastMessage(Throwable e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        return last.getMessage();
    }

    /** Asks the schema's own history, a few ms; Flyway itself takes half a second to say the same. 0 where there is none. */
    private static int version(DataSource pool) {
        try (Connection connection = pool.getConnection();
                ResultSet tables = connection
                        .getMetaData()
                        .getTables(null, null, "flyway_schema_history", new String[] {"TABLE"})) {
            if (!tables.next()) {
                return 0;
            }
            try (Statement statement = connection.createStatement();
                    ResultSet newest = statement.executeQuery("select \"version\" from \"flyway_schema_history\""
                            + " where \"success\" = true and \"version\" is not null"
                            + " order by \"installed_rank\" desc")) {
                return newest.next() ? Integer.parseInt(newest.getString(1)) : 0;
            }
        } catch (SQLException e) {
            throw new StoreException("The history of the store's schema cannot be read: " + e.getMessage(), e);
        }
    }

    private static void migrate(DataSource pool, boolean postgres) {
        Flyway.configure()
                .dataSource(pool)
                .locations(
                        "classpath:db/migration/common",
                        "classpath:db/migration/" + (postgres ? "postgresql" : "hsqldb"))
                .placeholders(Map.of("bytes", postgres ? "bytea" : "varbinary(1000000000)"))
                .load()
                .migrate();
    }

    private static SessionFactory hibernate(DataSource pool, boolean validate, List<Class<?>> entities) {
        Properties set = new Properties();
        set.put("hibernate.connection.datasource", pool);
        set.put(
                "hibernate.physical_naming_strategy",
                "org.hibernate.boot.model.naming.PhysicalNamingStrategySnakeCaseImpl");
        set.put("hibernate.jdbc.batch_size", "1000");
        set.put("hibernate.hbm2ddl.auto", validate ? "validate" : "none");
        set.put("jakarta.persistence.validation.mode", "none");
        set.put("hibernate.xml_mapping_enabled", "false");
        set.put("hibernate.cache.use_second_level_cache", "false");
        set.put("hibernate.type.preferred_instant_jdbc_type", "TIMESTAMP_WITH_TIMEZONE");
        Configuration configuration = new Configuration();
        configuration.setProperties(set);
        StoredTables.ALL.forEach(table -> configuration.addAnnotatedClass(table.entity()));
        entities.forEach(configuration::addAnnotatedClass);
        return configuration.buildSessionFactory();
    }
}
