package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import javax.sql.DataSource;
import org.hibernate.SessionFactory;
import org.hibernate.cfg.Configuration;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Opens a store: pool, schema, Hibernate. */
final class StoreOpening {
    /** Version of the newest migration; a test holds it against the files. */
    static final int NEWEST = 23;

    private static final int CONNECTIONS = 8;
    private static final long WRITERS_WAIT_MILLIS = 10_000;
    private static final long READERS_WAIT_MILLIS = 3_000;
    private static final String READERS_SOCKET_SECONDS = "30";
    private static final Logger LOG = LoggerFactory.getLogger(StoreOpening.class);

    private StoreOpening() {}

    static Store open(StoreSettings settings, List<Class<?>> entities) {
        checkFolder(settings);
        if (!settings.hasOurFiles()) {
            return opened(settings, entities);
        }
        Path folder = Objects.requireNonNull(Path.of(settings.place()).getParent());
        try (FolderTurn turn = FolderTurn.take(folder)) {
            InUse held = InUse.take(folder, settings);
            try {
                return upgraded(settings, folder, held, entities);
            } catch (RuntimeException e) {
                held.close();
                throw e;
            }
        }
    }

    private static Store upgraded(StoreSettings settings, Path folder, InUse held, List<Class<?>> entities) {
        StoreUpgrade upgrade = new StoreUpgrade(settings, folder, NEWEST);
        upgrade.finishInterrupted();
        boolean made = upgrade.isNew();
        if (made) {
            upgrade.make();
        }
        return withSchema(settings, broughtUp(settings, upgrade, entities), held, made, entities);
    }

    /** The pool of a store with the newest schema; the store is shut down while a copy of it is upgraded. */
    private static HikariDataSource broughtUp(StoreSettings settings, StoreUpgrade upgrade, List<Class<?>> entities) {
        HikariDataSource pool = pool(settings);
        try {
            int version = checkedVersion(settings, pool);
            if (version == NEWEST) {
                return pool;
            }
            pool.close();
            StoreUpgrade.shutDown(settings);
            upgrade.upgrade(version, copy -> hibernate(copy, true, entities).close());
            return pool(settings);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    private static Store opened(StoreSettings settings, List<Class<?>> entities) {
        HikariDataSource pool = pool(settings);
        try {
            boolean changed = checkedVersion(settings, pool) < NEWEST;
            if (changed && settings.isPostgres()) {
                Schema.migrateShared(pool, NEWEST);
            } else if (changed) {
                Schema.migrate(pool, NEWEST);
            }
            return withSchema(settings, pool, null, changed, entities);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    private static Store withSchema(
            StoreSettings settings,
            HikariDataSource pool,
            @Nullable InUse held,
            boolean validate,
            List<Class<?>> entities) {
        try {
            StorePools pools = new StorePools(settings, pool, reading(settings), held);
            return new Store(settings, pools, hibernate(pools, validate, entities));
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    private static int checkedVersion(StoreSettings settings, HikariDataSource pool) {
        int version = Schema.version(pool);
        if (version > NEWEST) {
            throw new StoreException(
                    "The store in " + settings + " has schema version " + version + ", but this program supports "
                            + NEWEST + ". Fix: use the newer program version that wrote it.",
                    new IllegalStateException());
        }
        return version;
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
        HikariConfig config = config(settings, "planner");
        config.setConnectionTimeout(WRITERS_WAIT_MILLIS);
        return opened(settings, config);
    }

    /** Opens its connections when pages ask for them: a command has none. */
    private static HikariDataSource reading(StoreSettings settings) {
        HikariConfig config = config(settings, "readers");
        config.setMinimumIdle(0);
        config.setInitializationFailTimeout(-1);
        config.setConnectionTimeout(READERS_WAIT_MILLIS);
        if (settings.isPostgres()) {
            config.addDataSourceProperty("socketTimeout", READERS_SOCKET_SECONDS);
        }
        return new HikariDataSource(config);
    }

    private static HikariConfig config(StoreSettings settings, String name) {
        HikariConfig config = new HikariConfig();
        config.setPoolName(name);
        config.setJdbcUrl(settings.url());
        config.setUsername(settings.user());
        config.setPassword(settings.password());
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        config.setThreadFactory(StoreOpening::ownThread);
        if (settings.isPostgres()) {
            config.addDataSourceProperty("connectTimeout", "3");
            config.addDataSourceProperty("tcpKeepAlive", "true");
        }
        return config;
    }

    /** The pool outlives the pages, so its threads must not belong to the request that made the pool grow. */
    private static Thread ownThread(Runnable work) {
        Thread thread = new Thread(work, "store-pool");
        thread.setDaemon(true);
        thread.setContextClassLoader(StoreOpening.class.getClassLoader());
        return thread;
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
                if (!isHeld(e) || !wait.hasTimeForAnother() || !LockWait.pause()) {
                    throw inWords(settings, e);
                }
                if (first) {
                    LOG.warn(
                            "The store in {} is locked by another process, or by one that was stopped: waiting up to {} s"
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

    private static StoreException inWords(StoreSettings settings, RuntimeException e) {
        if (isHeld(e)) {
            return new StoreException(inUse(settings), e);
        }
        return new StoreException(
                "The store at " + settings + " cannot be opened: " + StoreFailures.lastMessage(e)
                        + ". Fix: check the address, the folder's permissions, user and password.",
                e);
    }

    static String inUse(StoreSettings settings) {
        return "The store in " + settings
                + " is in use by another process. Fix: stop it (serve) first, or use its pages.";
    }

    private static String messages(Throwable e) {
        StringBuilder all = new StringBuilder();
        for (Throwable t = e; t != null; t = t.getCause()) {
            all.append(t.getMessage()).append('\n');
        }
        return all.toString();
    }

    static SessionFactory hibernate(DataSource pool, boolean validate, List<Class<?>> entities) {
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
