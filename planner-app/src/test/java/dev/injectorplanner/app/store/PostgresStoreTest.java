package dev.injectorplanner.app.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.sql.Connection;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

class PostgresStoreTest extends StoreContract {
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
    Store openEmpty() throws Exception {
        try (Connection connection = postgres.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("drop schema public cascade");
            statement.execute("create schema public");
        }
        return reopen();
    }

    @Override
    Store reopen() {
        return Store.open(new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres"));
    }
}
