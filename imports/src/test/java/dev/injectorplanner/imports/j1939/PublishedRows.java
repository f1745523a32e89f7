package dev.injectorplanner.imports.j1939;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a file under {@code published}, without the heading. */
final class PublishedRows {
    private PublishedRows() {}

    static List<String[]> of(String file) {
        try (InputStream in = PublishedRows.class.getResourceAsStream("/published/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .filter(line -> !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
