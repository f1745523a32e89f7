package dev.injectorplanner.app.command;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Where the store is: a folder, or a database's address. */
final class StoreOptions {
    @ArgGroup(exclusive = true)
    private @Nullable Place place;

    private static final class Place {
        @Option(
                names = "--data",
                paramLabel = "DIR",
                description = "Folder of the embedded store (default: planner-data).")
        private @Nullable Path data;

        @Option(
                names = "--database",
                paramLabel = "URL",
                description = "PostgreSQL store instead, such as jdbc:postgresql://host/planner. User and password are"
                        + " taken from PLANNER_DATABASE_USER and PLANNER_DATABASE_PASSWORD.")
        private @Nullable String database;
    }

    StoreSettings settings() {
        Place given = place;
        if (given != null && given.database != null) {
            return new StoreSettings(
                    given.database, environment("PLANNER_DATABASE_USER"), environment("PLANNER_DATABASE_PASSWORD"));
        }
        return StoreSettings.embedded(given == null || given.data == null ? Path.of("planner-data") : given.data);
    }

    /** The folder that was named, or another where none was; empty where a database was named. */
    Optional<Path> findFolder(Path otherwise) {
        Place given = place;
        if (given == null) {
            return Optional.of(otherwise);
        }
        return Optional.ofNullable(given.data);
    }

    private static String environment(String name) {
        String value = System.getenv(name);
        return value == null ? "" : value;
    }
}
