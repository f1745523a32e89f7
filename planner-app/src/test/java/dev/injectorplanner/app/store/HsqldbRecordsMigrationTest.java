package dev.injectorplanner.app.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;

class HsqldbRecordsMigrationTest extends RecordsMigrationContract {
    @TempDir
    private Path folder;

    private HikariDataSource pool;

    @Override
    DataSource empty() {
        pool = OldStore.pool(StoreSettings.embedded(folder));
        return pool;
    }

    @AfterEach
    void close() {
        pool.close();
        StoreUpgrade.shutDown(StoreSettings.embedded(folder));
    }

    @Override
    void migrate(DataSource store, int version) {
        Schema.migrate(store, version);
    }
}
