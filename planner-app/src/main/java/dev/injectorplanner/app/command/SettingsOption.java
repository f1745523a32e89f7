package dev.injectorplanner.app.command;

import dev.injectorplanner.app.wiring.JobsSettings;
import dev.injectorplanner.app.wiring.ProviderSettings;
import dev.injectorplanner.app.wiring.Settings;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
        return JobsSettings.of(read());
    }

    /** The provider that people sign in through, where one is set. */
    Optional<ProviderSettings> provider() {
        return ProviderSettings.find(read(), System.getenv());
    }

    private Settings read() {
        Set<String> known = new TreeSet<>(JobsSettings.names());
        known.addAll(ProviderSettings.names());
        return Settings.read(file, known);
    }
}
