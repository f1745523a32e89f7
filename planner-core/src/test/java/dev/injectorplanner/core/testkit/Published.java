package dev.injectorplanner.core.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the small tables under {@code published}: commas, no quotes that matter. */
public final class Published {
    private Published() {}

    /** Rows without the heading, cells stripped. */
    public static List<String[]> rows(String file) {
        try (InputStream in = Published.class.getResourceAsStream("/published/" + file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
