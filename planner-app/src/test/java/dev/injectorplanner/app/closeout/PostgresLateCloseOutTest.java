package dev.injectorplanner.app.closeout;

import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;

class PostgresLateCloseOutTest extends LateCloseOutContract {
    private EmbeddedPostgres postgres;

    @Override
    StoreSettings store(Path data) throws Exception {
        postgres = EmbeddedPostgres.start();
        return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
    }

    @AfterAll
    void stop() throws Exception {
        postgres.close();
    }
}
