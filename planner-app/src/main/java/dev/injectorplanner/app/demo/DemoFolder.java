package dev.injectorplanner.app.demo;

import dev.injectorplanner.core.check.UserError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The demo's folder: emptied and filled again on every run, but only where it is the demo's. */
public final class DemoFolder {
    private static final String MARK = "this-is-the-demo.txt";
    private static final List<String> PARTS = List.of("data", "files", "sheets");

    private final Path folder;

    private DemoFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Takes a folder for the demo.
     *
     * @throws NotTheDemoException where something else lies in it
     */
    public static DemoFolder take(Path folder) throws IOException {
        Path mark = folder.resolve(MARK);
        if (Files.exists(folder) && !Files.exists(mark) && !isEmpty(folder)) {
            throw new NotTheDemoException(
                    folder + " contains something other than the demo. Fix: choose an empty or new folder with --dir.");
        }
        Files.createDirectories(folder);
        Files.writeString(mark, "Each run of the demo recreates everything in data, files and sheets.\n");
        for (String part : PARTS) {
            remove(folder.resolve(part));
        }
        Files.createDirectories(folder.resolve("files"));
        return new DemoFolder(folder);
    }

    /**
     * Makes sure that a store's folder is the demo's.
     *
     * @param data the store's folder within it
     * @throws NotTheDemoException where it is not, or the demo has not been made yet
     */
    public static void requireData(Path data) {
        Path folder = data.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.exists(folder.resolve(MARK)) || !Files.isDirectory(data)) {
            throw new NotTheDemoException(
                    data + " is not the demo's data. Fix: create the demo first with the demo command, or name its data"
                            + " folder with --data.");
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private static void remove(Path part) throws IOException {
        if (!Files.exists(part)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(part)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    public Path data() {
        return folder.resolve("data");
    }

    public Path files() {
        return folder.resolve("files");
    }

    public Path sheets() {
        return folder.resolve("sheets");
    }

    /** The folder is not the demo's. */
    public static final class NotTheDemoException extends RuntimeException implements UserError {
        private static final long serialVersionUID = 1L;

        NotTheDemoException(String message) {
            super(message);
        }
    }
}
