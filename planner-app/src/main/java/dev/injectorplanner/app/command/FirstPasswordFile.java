package dev.injectorplanner.app.command;

import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** The first password in a file that its owner alone may read, for a program whose output is kept. */
final class FirstPasswordFile {
    private FirstPasswordFile() {}

    /**
     * To be asked before there is a password, since it cannot be shown again.
     *
     * @throws InvalidValueException where its folder takes no file
     */
    static void requireFolder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder) || !Files.isWritable(folder)) {
            throw refused(file);
        }
    }

    /** @throws InvalidValueException where the file cannot be written */
    static void write(Path file, String password) {
        try {
            Files.deleteIfExists(file);
            Files.createFile(file, ownerOnly(file));
            Files.writeString(file, password + "\n", StandardCharsets.UTF_8, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw refused(file);
        }
    }

    private static InvalidValueException refused(Path file) {
        return new InvalidValueException(
                "--first-password-file", file, "cannot be written", "name a file in a folder that can be written");
    }

    private static FileAttribute<?>[] ownerOnly(Path file) {
        boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }
}
