package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.task.Backup;
import dev.injectorplanner.app.store.DatabaseTools;
import dev.injectorplanner.app.store.StoreBackup;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** A copy of an embedded store. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description =
                "Backs up the embedded store to one file and checks it. For PostgreSQL it prints the command of the database's own tools.")
final class BackupCommand extends StoreCommand {
    @Option(names = "--to", paramLabel = "FILE", description = "Backup file (default: planner-TIME.zip here).")
    private @Nullable Path to;

    @Override
    public Integer call() {
        Path zip = to == null ? Path.of(Backup.nameAt(Instant.now())) : to;
        try (Application application = open()) {
            DatabaseTools tools = application.store().findTools().orElse(null);
            if (tools != null) {
                throw new ParameterException(
                        commandLine(),
                        "The store is a PostgreSQL database. Fix: back it up with its own tools:\n  " + tools.backup());
            }
            long rows = StoreBackup.make(application.store().dataSource(), zip);
            out().printf("Copied %,d rows to %s%n", rows, zip);
        }
        return 0;
    }
}
