package dev.injectorplanner.core.planted;

import java.nio.file.Path;

/** Breaks a rule on purpose: knows files. */
public final class CoreWithFile {
    Path file() {
        return Path.of("fleet.csv");
    }
}
