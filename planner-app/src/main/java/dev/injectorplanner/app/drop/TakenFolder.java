package dev.injectorplanner.app.drop;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one node has taken. A file is taken by renaming it into the node's own folder, which the file system does for one
 * of them only. A file in that folder says that the node lives; when it has been silent too long, others take its files.
 */
final class TakenFolder {
    private static final String ALIVE = ".alive";

    /** Put back after it was corrected; under its old name the load of its original would take it for its own. */
    private static final String REFUSED = "\\.refused\\.csv$";

    private final Path taken;
    private final Path mine;

    TakenFolder(Path taken, String node) throws IOException {
        this.taken = taken;
        this.mine = taken.resolve(node);
        Files.createDirectories(mine);
    }

    /** Gives a sign of life. */
    void beat(Instant now) throws IOException {
        Path alive = mine.resolve(ALIVE);
        try {
            Files.createFile(alive);
        } catch (FileAlreadyExistsException e) {
            // it is there already: its time is what counts
        }
        Files.setLastModifiedTime(alive, FileTime.from(now));
    }

    /** Takes a file; empty where another was faster. */
    Optional<Path> take(Path file) throws IOException {
        String name = String.valueOf(file.getFileName()).replaceFirst(REFUSED, "-corrected.csv");
        Path mineNow = FreeName.reserve(mine, name);
        try {
            return Optional.of(Files.move(file, mineNow, StandardCopyOption.ATOMIC_MOVE));
        } catch (NoSuchFileException e) {
            Files.deleteIfExists(mineNow);
            return Optional.empty();
        }
    }

    /** Files of nodes that have given no sign for too long, taken over. */
    List<Path> takeBack(Instant now, Duration deadAfter) throws IOException {
        List<Path> back = new ArrayList<>();
        for (Path node : list(taken)) {
            if (node.equals(mine) || !Files.isDirectory(node) || !isSilent(node, now.minus(deadAfter))) {
                continue;
            }
            for (Path file : list(node)) {
                if (!ALIVE.equals(String.valueOf(file.getFileName()))) {
                    take(file).ifPresent(back::add);
                }
            }
            bury(node);
        }
        return back;
    }

    /** Leaves nothing behind where nothing is left to do. */
    void close() throws IOException {
        if (list(mine).stream().allMatch(file -> ALIVE.equals(String.valueOf(file.getFileName())))) {
            bury(mine);
        }
    }

    private static void bury(Path node) throws IOException {
        Files.deleteIfExists(node.resolve(ALIVE));
        try {
            Files.deleteIfExists(node);
        } catch (DirectoryNotEmptyException e) {
            // it woke up and took a file: then it is not dead
        }
    }

    private static boolean isSilent(Path node, Instant since) throws IOException {
        try {
            return Files.getLastModifiedTime(node.resolve(ALIVE)).toInstant().isBefore(since);
        } catch (NoSuchFileException e) {
            return isOld(node, since);
        }
    }

    private static boolean isOld(Path node, Instant since) throws IOException {
        try {
            return Files.getLastModifiedTime(node).toInstant().isBefore(since);
        } catch (NoSuchFileException e) {
            return false; // another buried it
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (NoSuchFileException e) {
            return List.of();
        }
    }
}
