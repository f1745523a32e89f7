package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

class PostgresJobRunsTest extends JobRunsContract {
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
    Store open() {
        return Store.open(new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres"));
    }
}
