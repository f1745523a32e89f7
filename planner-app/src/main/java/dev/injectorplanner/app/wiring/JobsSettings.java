package dev.injectorplanner.app.wiring;

import dev.injectorplanner.app.jobs.quartz.QuartzSettings;
import dev.injectorplanner.core.check.Require;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The site's settings of jobs.
 *
 * @param quartz how jobs are fired
 * @param lease how long a silent node keeps a run, 5 s to 10 min
 * @param backupFolder where copies of the store go; empty: beside the store's folder
 * @param backupKeep how many copies stay, 1 to 1,000
 * @param dropFolder where files are put to be loaded; empty: nowhere
 */
public record JobsSettings(
        QuartzSettings quartz, Duration lease, Optional<Path> backupFolder, int backupKeep, Optional<Path> dropFolder) {
    /** Names of the settings, in words that a file may use. */
    public enum Name {
        THREADS("jobs.threads", "2", "number of jobs at a time in this process"),
        LEASE("jobs.lease-seconds", "20", "how long an unresponsive node keeps a run before another takes over"),
        STOP("jobs.stop-seconds", "20", "how long a shutdown waits for running jobs"),
        BACKUP_FOLDER("backup.folder", "store's folder + -backup", "where copies of the embedded store go"),
        DROP_FOLDER("drop.folder", "none", "where files are put to be loaded"),
        BACKUP_KEEP("backup.keep", "7", "how many copies are kept");

        private final String key;
        private final String otherwise;
        private final String words;

        Name(String key, String otherwise, String words) {
            this.key = key;
            this.otherwise = otherwise;
            this.words = words;
        }

        public String key() {
            return key;
        }

        /** The default, as a person would write it. */
        public String otherwise() {
            return otherwise;
        }

        /** What it is. */
        public String words() {
            return words;
        }
    }

    private static final Duration CHECK_IN = Duration.ofSeconds(5);

    public JobsSettings {
        Require.within(Name.LEASE.key, lease.toMillis() / 1_000.0, 5, 600);
        Require.within(Name.BACKUP_KEEP.key, backupKeep, 1, 1_000);
    }

    /** Where copies of an embedded store go. */
    public Path backupFolderOf(Path store) {
        return backupFolder.orElse(store.resolveSibling(store.getFileName() + "-backup"));
    }

    /** Every name a file may use. */
    public static Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (Name name : Name.values()) {
            names.add(name.key);
        }
        return names;
    }

    public static JobsSettings of(Settings settings) {
        return new JobsSettings(
                new QuartzSettings(
                        number(settings, Name.THREADS), CHECK_IN, Duration.ofSeconds(number(settings, Name.STOP))),
                Duration.ofSeconds(number(settings, Name.LEASE)),
                settings.find(Name.BACKUP_FOLDER.key).map(Path::of),
                number(settings, Name.BACKUP_KEEP),
                settings.find(Name.DROP_FOLDER.key).map(Path::of));
    }

    private static int number(Settings settings, Name name) {
        return settings.number(name.key, Integer.parseInt(name.otherwise));
    }
}
