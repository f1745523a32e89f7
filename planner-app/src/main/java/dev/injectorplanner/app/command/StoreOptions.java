package dev.injectorplanner.app.command;

import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/**
 * Where the store is: a folder, or a database's address. In a command with subcommands the place may stand before the
 * subcommand or after it, where both have these options.
 */
final class StoreOptions {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

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
                description = "PostgreSQL store instead, such as jdbc:postgresql://host/planner. User and password come"
                        + " from PLANNER_DATABASE_USER and PLANNER_DATABASE_PASSWORD.")
        private @Nullable String database;

        private boolean isSameAs(Place other) {
            return Objects.equals(folder(), other.folder()) && Objects.equals(database, other.database);
        }

        private @Nullable Path folder() {
            return data == null ? null : data.toAbsolutePath().normalize();
        }

        @Override
        public String toString() {
            return database == null ? "--data " + data : "--database " + new StoreSettings(database, "", "");
        }
    }

    /** The store that was named here or before the subcommand. */
    StoreSettings settings() {
        Place given = given();
        if (given != null && given.database != null) {
            return new StoreSettings(
                    given.database, environment("PLANNER_DATABASE_USER"), environment("PLANNER_DATABASE_PASSWORD"));
        }
        return StoreSettings.embedded(given == null || given.data == null ? Path.of("planner-data") : given.data);
    }

    /** Whether a store was named at all. */
    boolean isGiven() {
        return given() != null;
    }

    /** The folder that was named, or another where none was; empty where a database was named. */
    Optional<Path> findFolder(Path otherwise) {
        Place given = given();
        if (given == null) {
            return Optional.of(otherwise);
        }
        return Optional.ofNullable(given.data);
    }

    /** What was given nearest to the end of the line; two that differ are refused. */
    private @Nullable Place given() {
        List<Place> all = new ArrayList<>();
        for (CommandSpec command = spec; command != null; command = command.parent()) {
            for (CommandSpec mixin : command.mixins().values()) {
                if (mixin.userObject() instanceof StoreOptions options && options.place != null) {
                    all.add(options.place);
                }
            }
        }
        for (Place other : all) {
            if (!other.isSameAs(all.get(0))) {
                throw new ParameterException(
                        spec.commandLine(),
                        "Two stores are named, " + other + " and " + all.get(0) + ". Fix: name one.");
            }
        }
        return all.isEmpty() ? null : all.get(0);
    }

    static String environment(String name) {
        String value = System.getenv(name);
        return value == null ? "" : value;
    }
}
