package dev.injectorplanner.app.order;

import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;

class PostgresShopLoopTest extends ShopLoopContract {
    private EmbeddedPostgres postgres;

    @Override
    StoreSettings store(Path data) throws Exception {
        postgres = EmbeddedPostgres.start();
        return new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
    }

    @AfterEach
    void stop() throws Exception {
        postgres.close();
    }
}
