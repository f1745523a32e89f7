package dev.injectorplanner.app.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Files of an embedded store, all named {@code planner.*}: copied, moved and made safe against a power loss. */
final class StoreFiles {
    static final String NAME = "planner";

    /** The database's own lock, which lapses by itself, and its scratch file. */
    private static final Set<String> NOT_KEPT = Set.of(NAME + ".lck", NAME + ".tmp");

    private StoreFiles() {}

    /** The files that make up the store in a folder, sorted; none where the folder is missing. */
    static List<Path> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> isOurs(String.valueOf(file.getFileName())) && Files.isRegularFile(file))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isOurs(String name) {
        return name.startsWith(NAME + ".") && !NOT_KEPT.contains(name);
    }

    /** Their size together, in bytes. */
    static long bytes(Path folder) throws IOException {
        long sum = 0;
        for (Path file : in(folder)) {
            sum += Files.size(file);
        }
        return sum;
    }

    /** Copies the store of one folder into another one, on the disk itself when this returns. */
    static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Path file : in(from)) {
            Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
        }
        sync(to);
    }

    /** Moves the store's files one by one; what was moved before stays moved. */
    static void move(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Path file : in(from)) {
            Files.move(file, to.resolve(file.getFileName()), StandardCopyOption.ATOMIC_MOVE);
        }
        syncFolder(to);
        syncFolder(from);
    }

    /** One rename, on the disk itself when this returns: before it all is as it was, after it all is done. */
    static void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        Path parent = to.toAbsolutePath().getParent();
        if (parent != null) {
            syncFolder(parent);
        }
    }

    /** Writes one file, and the folder it lies in, through to the disk. */
    static void sync(Path folder, Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        syncFolder(folder);
    }

    /** Writes every file of a folder, and the folder, through to the disk. */
    static void sync(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                    channel.force(true);
                }
            }
        }
        syncFolder(folder);
    }

    /** Some systems cannot open a folder; they write its entries through by themselves. */
    private static void syncFolder(Path folder) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (channel) {
            channel.force(true);
        }
    }

    /** Removes a folder with all that is in it; nothing where it is missing. */
    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
