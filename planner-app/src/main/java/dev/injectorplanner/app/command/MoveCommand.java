package dev.injectorplanner.app.command;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreMove;
import dev.injectorplanner.app.store.StoreSettings;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A store goes to another database; the one it came from stays as it is. */
@Command(
        name = "move",
        mixinStandardHelpOptions = true,
        description =
                "Copies the store to another, empty database and compares row counts and checksums of every table."
                        + " Stop the program first; the old store stays as it is.")
final class MoveCommand extends StoreCommand {
    @Option(
            names = "--to",
            paramLabel = "URL|DIR",
            required = true,
            description = "PostgreSQL database, such as jdbc:postgresql://host/planner, with user and password in"
                    + " PLANNER_DATABASE_USER and PLANNER_DATABASE_PASSWORD; or a folder for an embedded store.")
    private String to;

    @Override
    public Integer call() {
        StoreSettings target = to.startsWith("jdbc:")
                ? new StoreSettings(
                        to,
                        StoreOptions.environment("PLANNER_DATABASE_USER"),
                        StoreOptions.environment("PLANNER_DATABASE_PASSWORD"))
                : StoreSettings.embedded(Path.of(to));
        StoreSettings source = store().settings();
        if (source.url().equals(target.url())) {
            throw new ParameterException(
                    commandLine(), "The store is already there. Fix: name another place with --to.");
        }
        try (Store from = Store.open(source);
                Store into = Store.open(target)) {
            Map<String, Long> rows = StoreMove.copy(from, into);
            long sum = rows.values().stream().mapToLong(Long::longValue).sum();
            out().printf(
                            "Moved %,d rows of %d tables to %s; counts and checksums of every table agree.%n",
                            sum, rows.size(), target);
            out().printf(
                            "Next: start the program with %s.%n",
                            to.startsWith("jdbc:") ? "--database " + target : "--data " + to);
        }
        return 0;
    }
}
