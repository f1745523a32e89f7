package dev.injectorplanner.app.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

class PostgresRecordsMigrationTest extends RecordsMigrationContract {
    private static EmbeddedPostgres postgres;

    @BeforeAll
    static void start() throws Exception {
        postgres = EmbeddedPostgres.start();
    }

    @AfterAll
    static void stop() throws Exception {
        postgres.close();
    }

    @Override
    DataSource empty() {
        return postgres.getPostgresDatabase();
    }

    @Override
    void migrate(DataSource store, int version) {
        Schema.migrateShared(store, version);
    }
}
