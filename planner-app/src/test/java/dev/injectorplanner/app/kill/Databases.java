package dev.injectorplanner.app.kill;

import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** Empty stores of one kind of database, as many as a test asks for. */
public abstract class Databases implements AutoCloseable {
    private int made;

    /** Embedded stores in folders of a folder. */
    public static Databases embedded(Path folder) {
        return new Databases() {
            @Override
            StoreSettings next(String name) throws IOException {
                return StoreSettings.embedded(Files.createDirectories(folder.resolve(name)));
            }

            @Override
            public void close() {}
        };
    }

    /** Databases of one PostgreSQL. */
    public static Databases shared() throws IOException {
        EmbeddedPostgres postgres = EmbeddedPostgres.start();
        return new Databases() {
            @Override
            StoreSettings next(String name) throws SQLException {
                try (Connection connection = postgres.getPostgresDatabase().getConnection();
                        Statement statement = connection.createStatement()) {
                    statement.execute("create database " + name);
                }
                return new StoreSettings(postgres.getJdbcUrl("postgres", name), "postgres", "postgres");
            }

            @Override
            public void close() throws IOException {
                postgres.close();
            }
        };
    }

    abstract StoreSettings next(String name) throws Exception;

    /** Another empty store. */
    public final StoreSettings next() throws Exception {
        return next("killed" + made++);
    }

    @Override
    public abstract void close() throws IOException;
}
