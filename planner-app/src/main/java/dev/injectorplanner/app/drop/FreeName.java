package dev.injectorplanner.app.drop;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A name that no other file in a folder has: {@code readings.csv}, {@code readings-2.csv}, ... */
final class FreeName {
    private FreeName() {}

    /** An empty file of that name, made in one step, so that no other node gets the same name. */
    static Path reserve(Path folder, String name) throws IOException {
        for (int number = 1; ; number++) {
            Path free = folder.resolve(number == 1 ? name : stem(name) + "-" + number + ending(name));
            try {
                return Files.createFile(free);
            } catch (FileAlreadyExistsException e) {
                // somebody has it: the next number
            }
        }
    }

    static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private static String ending(String name) {
        return name.substring(stem(name).length());
    }
}
