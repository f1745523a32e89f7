package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.store.StoreBackup;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * Copies the embedded store into a folder while it is in use, and keeps the newest copies. A copy is named by when it was
 * made and gets its name only when it is whole and was counted. To restore: the command {@code restore}.
 */
public final class Backup implements JobTask {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'planner-'yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern OURS = Pattern.compile("planner-\\d{8}T\\d{6}Z\\.zip");
    private static final Pattern LEFT = Pattern.compile("planner-\\d{8}T\\d{6}Z(\\.zip)?\\.(files|partial)");
    private static final int END_OF_DAY = "planner-yyyyMMdd".length();

    private final DataSource pool;
    private final Path folder;
    private final int keep;
    private final InstantSource clock;

    /**
     * @param folder where copies go; made where it is not there
     * @param keep how many copies stay, at least 1
     */
    public Backup(DataSource pool, Path folder, int keep) {
        this(pool, folder, keep, InstantSource.system());
    }

    Backup(DataSource pool, Path folder, int keep, InstantSource clock) {
        this.pool = pool;
        this.folder = folder.toAbsolutePath().normalize();
        this.keep = keep;
        this.clock = clock;
        if (Pattern.compile("['\\p{Cntrl}]").matcher(this.folder.toString()).find()) {
            throw new InvalidValueException(
                    "backup.folder",
                    folder,
                    "has a quotation mark in its name",
                    "set backup.folder to a different folder");
        }
    }

    /** Where a copy that is made now goes, by default. */
    public static String nameAt(Instant moment) {
        return NAME.format(moment) + ".zip";
    }

    /** Copies in a folder that were made by this job, the newest first; none where there is no folder yet. */
    public static List<Path> listIn(Path folder) throws IOException {
        return Files.isDirectory(folder) ? named(folder, OURS) : List.of();
    }

    @Override
    public TaskResult run(JobContext context) throws IOException {
        Files.createDirectories(folder);
        removeLeft();
        Path copy = folder.resolve(nameAt(clock.instant()));
        long rows = StoreBackup.make(pool, copy);
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("KiB", (Files.size(copy) + 1023) / 1024);
        counts.put("rows", rows);
        counts.put("old copies removed", removeOld());
        return TaskResult.counted(counts);
    }

    /** Left by a process that was killed while it copied. */
    private void removeLeft() throws IOException {
        for (Path left : named(folder, LEFT)) {
            if (Files.isDirectory(left)) {
                FolderZip.delete(left);
            } else {
                Files.delete(left);
            }
        }
    }

    private static List<Path> named(Path folder, Pattern pattern) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file ->
                            pattern.matcher(String.valueOf(file.getFileName())).matches())
                    .sorted(Comparator.comparing(Path::toString).reversed())
                    .toList();
        }
    }

    /** The newest of each day goes before further ones of a day: many copies of one hour push out no older day. */
    private long removeOld() throws IOException {
        List<Path> lastOfDays = new ArrayList<>();
        List<Path> others = new ArrayList<>();
        Set<String> days = new HashSet<>();
        for (Path copy : named(folder, OURS)) {
            String day = String.valueOf(copy.getFileName()).substring(0, END_OF_DAY);
            (days.add(day) ? lastOfDays : others).add(copy);
        }
        lastOfDays.addAll(others);
        List<Path> old = lastOfDays.subList(Math.min(keep, lastOfDays.size()), lastOfDays.size());
        for (Path copy : old) {
            Files.deleteIfExists(copy);
        }
        return old.size();
    }
}
