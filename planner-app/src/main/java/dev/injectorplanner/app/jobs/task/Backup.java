package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * Copies the embedded store into a folder while it is in use, and keeps the newest copies. A copy bears the time it was due
 * and gets its name only when it is whole. To restore: unpack it into an empty folder and open that.
 */
public final class Backup implements JobTask {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'planner-'yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern OURS = Pattern.compile("planner-\\d{8}T\\d{6}Z\\.zip");

    private final DataSource pool;
    private final Path folder;
    private final int keep;

    /**
     * @param folder where copies go; made where it is not there
     * @param keep how many copies stay, at least 1
     */
    public Backup(DataSource pool, Path folder, int keep) {
        this.pool = pool;
        this.folder = folder.toAbsolutePath().normalize();
        this.keep = keep;
        if (Pattern.compile("['\\p{Cntrl}]").matcher(this.folder.toString()).find()) {
            throw new InvalidValueException(
                    "backup.folder",
                    folder,
                    "has a quotation mark in its name",
                    "set backup.folder to a different folder");
        }
    }

    @Override
    public TaskResult run(JobContext context) throws IOException, SQLException {
        Files.createDirectories(folder);
        String name = NAME.format(context.key().due());
        Path copy = folder.resolve(name + ".zip");
        if (!Files.exists(copy)) {
            Path files = folder.resolve(name + ".files");
            Path packed = folder.resolve(name + ".zip.partial");
            FolderZip.delete(files); // left by a run that was cut off
            copyTo(Files.createDirectory(files));
            FolderZip.pack(files, packed);
            Files.move(packed, copy, StandardCopyOption.ATOMIC_MOVE);
            FolderZip.delete(files);
        }
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("KiB", (Files.size(copy) + 1023) / 1024);
        counts.put("old copies removed", removeOld());
        return TaskResult.counted(counts);
    }

    private void copyTo(Path files) throws SQLException {
        try (Connection connection = pool.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("backup database to '" + files + "/' not blocking as files");
        }
    }

    private long removeOld() throws IOException {
        List<Path> copies;
        try (Stream<Path> files = Files.list(folder)) {
            copies = files.filter(file ->
                            OURS.matcher(String.valueOf(file.getFileName())).matches())
                    .sorted(Comparator.comparing(Path::toString).reversed())
                    .toList();
        }
        List<Path> old = copies.subList(Math.min(keep, copies.size()), copies.size());
        for (Path copy : old) {
            Files.deleteIfExists(copy);
        }
        return old.size();
    }
}
