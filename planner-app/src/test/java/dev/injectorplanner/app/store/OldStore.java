package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Stores as earlier versions of the program left them. The zips in {@code stores} are the files of stores that held the rows
 * of {@link OneOfEach} at their schema version, shut down; they are never made again.
 */
final class OldStore {
    /** Schema version of the last release. */
    static final int LAST_RELEASE = 19;

    private OldStore() {}

    /** Unpacks the store of a schema version. */
    static void unpack(int version, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (InputStream file = OldStore.class.getResourceAsStream("/stores/schema-" + version + ".zip");
                ZipInputStream zip = new ZipInputStream(file)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Files.copy(zip, folder.resolve(entry.getName()));
            }
        }
    }

    /** An embedded store without rows whose schema was brought to a version in place, as earlier programs did. */
    static void empty(int version, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (HikariDataSource pool = pool(StoreSettings.embedded(folder))) {
            Schema.migrate(pool, version);
        }
        StoreUpgrade.shutDown(StoreSettings.embedded(folder));
    }

    /** Runs SQL in an embedded store, which is shut down afterwards. */
    static void run(Path folder, List<String> statements) throws Exception {
        try (HikariDataSource pool = pool(StoreSettings.embedded(folder));
                Connection connection = pool.getConnection();
                var statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
        StoreUpgrade.shutDown(StoreSettings.embedded(folder));
    }

    static HikariDataSource pool(StoreSettings settings) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(settings.url());
        config.setUsername(settings.user());
        config.setPassword(settings.password());
        config.setMaximumPoolSize(3);
        return new HikariDataSource(config);
    }
}
