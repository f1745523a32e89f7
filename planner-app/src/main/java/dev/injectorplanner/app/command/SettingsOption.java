package dev.injectorplanner.app.command;

import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The site's settings file. */
final class SettingsOption {
    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "Settings of the site, lines of name=value (default: every default).")
    private @Nullable Path file;

    JobsSettings jobs() {
        return JobsSettings.of(Settings.read(file, JobsSettings.names()));
    }
}
