package dev.injectorplanner.app.command;

import dev.injectorplanner.app.store.DatabaseTools;
import dev.injectorplanner.app.store.StoreBackup;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** A copy of an embedded store becomes one again. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Restores a backup into an empty folder and checks its checksums and row counts.")
final class RestoreCommand extends StoreCommand {
    @Parameters(paramLabel = "FILE", description = "Backup file.")
    private Path zip;

    @Override
    public Integer call() {
        Path folder = store().findFolder(Path.of("planner-data"))
                .orElseThrow(() -> new ParameterException(
                        commandLine(),
                        "A backup is restored into a folder. Fix: name an empty one with --data. A PostgreSQL database is"
                                + " restored with its own tools:\n  "
                                + String.join(
                                        "\n  ",
                                        DatabaseTools.of(store().settings()).restore())));
        long rows = StoreBackup.restore(zip, folder);
        out().printf("Restored %,d rows into %s%n", rows, folder);
        return 0;
    }
}
