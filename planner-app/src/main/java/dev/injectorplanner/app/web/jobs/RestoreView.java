package dev.injectorplanner.app.web.jobs;

import dev.injectorplanner.app.jobs.task.Backup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * How the administrator restores a backup. A running server does not do it itself: sessions, jobs and loads under way would
 * go on writing to a store that is being replaced.
 *
 * @param folder where backups are
 * @param copies backups, the newest first
 * @param serve the command that starts the server on a restored store
 */
record RestoreView(String folder, List<Copy> copies, String serve) {
    RestoreView {
        copies = List.copyOf(copies);
    }

    /**
     * A backup.
     *
     * @param kilobytes its size
     * @param restore the command that restores it
     */
    record Copy(String file, long kilobytes, String restore) {}

    /** @param store the folder of the store in use */
    static RestoreView of(Path store, Path folder) throws IOException {
        Path restored = store.toAbsolutePath().resolveSibling(store.getFileName() + "-restored");
        List<Copy> copies = new ArrayList<>();
        for (Path copy : Backup.listIn(folder.toAbsolutePath())) {
            copies.add(new Copy(
                    String.valueOf(copy.getFileName()),
                    (Files.size(copy) + 1023) / 1024,
                    "java -jar planner.jar restore " + quoted(copy) + " --data " + quoted(restored)));
        }
        return new RestoreView(
                folder.toAbsolutePath().toString(), copies, "java -jar planner.jar serve --data " + quoted(restored));
    }

    private static String quoted(Path path) {
        String text = path.toString();
        return text.contains(" ") ? "\"" + text + "\"" : text;
    }
}
