package dev.injectorplanner.app.jobs.task;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A flat folder of files as one file. */
final class FolderZip {
    private FolderZip() {}

    static void pack(Path folder, Path target) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
            for (Path file : files(folder)) {
                zip.putNextEntry(new ZipEntry(String.valueOf(file.getFileName())));
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
    }

    /** Removes the folder and its files; nothing where it is not there. */
    static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            for (Path file : files(folder)) {
                Files.delete(file);
            }
            Files.delete(folder);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
