package dev.injectorplanner.app.wiring;

import dev.injectorplanner.core.check.InvalidValueException;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/** The site's settings as written in a file of {@code name=value} lines. A name that means nothing is refused. */
public final class Settings {
    private final Map<String, String> values;

    private Settings(Map<String, String> values) {
        this.values = values;
    }

    /** Nothing set: every default holds. */
    public static Settings none() {
        return new Settings(Map.of());
    }

    /**
     * Reads a file.
     *
     * @param known the names there are
     * @throws InvalidValueException where it cannot be read, or has a name that is not known
     */
    public static Settings read(@Nullable Path file, Set<String> known) {
        if (file == null) {
            return none();
        }
        Properties read = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            read.load(reader);
        } catch (IOException | IllegalArgumentException e) {
            throw new InvalidValueException(
                    "--settings", file, "cannot be read", "name a text file with lines such as backup.keep=7");
        }
        return of(read, known);
    }

    static Settings of(Properties read, Set<String> known) {
        Map<String, String> values = new TreeMap<>();
        for (String name : read.stringPropertyNames()) {
            if (!known.contains(name)) {
                throw new InvalidValueException(
                        "setting",
                        name,
                        "is not known",
                        nearest(name, known)
                                .map(near -> "write " + near + ", or remove it")
                                .orElse("remove it"));
            }
            values.put(name, read.getProperty(name).strip());
        }
        return new Settings(values);
    }

    private static Optional<String> nearest(String name, Set<String> known) {
        LevenshteinDistance distance = new LevenshteinDistance();
        return known.stream()
                .min(Comparator.<String>comparingInt(other -> distance.apply(name, other))
                        .thenComparing(Comparator.naturalOrder()));
    }

    Optional<String> find(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** A whole number, or {@code otherwise} where it is not set. */
    int number(String name, int otherwise) {
        String text = values.get(name);
        if (text == null) {
            return otherwise;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new InvalidValueException(name, text, "is not a whole number", "write one, such as " + otherwise);
        }
    }
}
