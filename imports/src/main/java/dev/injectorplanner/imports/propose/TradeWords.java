package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** What offices call columns and the words in them. */
final class TradeWords {
    private static final Map<String, List<String>> COLUMNS = read("trade-words.txt", 1);
    private static final Map<String, List<String>> VALUES = read("value-words.txt", 2);

    private static final Map<String, String> PLAIN = new ConcurrentHashMap<>();
    private static final Map<String, String> IN_WORDS = new ConcurrentHashMap<>();
    private static final Set<String> HOURS = Set.of("h", "hr", "hrs", "hour", "hours");

    private TradeWords() {}

    /** The plain form of a name of ours; there are some hundreds of them. */
    static String plainName(String name) {
        return PLAIN.computeIfAbsent(name, Heading::plain);
    }

    /** What offices call a column. */
    static List<String> names(Table<?> table, Column<?> column) {
        List<String> names = new ArrayList<>(COLUMNS.getOrDefault(table.name() + "." + column.base(), List.of()));
        names.addAll(COLUMNS.getOrDefault(column.base(), List.of()));
        names.add(column.base().replace('_', ' '));
        return names;
    }

    /** The unit that a heading says, or null. */
    static @org.jspecify.annotations.Nullable ColumnUnit unit(String heading, Column<?> column) {
        for (String word : words(heading)) {
            for (ColumnUnit unit : column.units()) {
                if (unit.isNamed(word)) {
                    return unit;
                }
            }
        }
        return null;
    }

    static boolean isHours(String word) {
        return HOURS.contains(word);
    }

    /** Whether a word names a unit of some column, or hours. */
    static boolean isUnitOrHours(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return HOURS.contains(small) || isUnit(small);
    }

    /** Whether a cell says behind its number that it counts hours, such as 12,345 h. */
    static boolean saysHours(String cell) {
        List<String> words = words(cell);
        return words.size() > 1 && HOURS.contains(words.get(words.size() - 1));
    }

    /** Whether a word names a unit of some column. */
    static boolean isUnit(String word) {
        return Arrays.stream(ColumnUnit.values()).anyMatch(unit -> unit.isNamed(word));
    }

    /** Whether the words of a name stand in the heading one after the other. */
    static boolean holds(String inWords, String name) {
        String wanted = IN_WORDS.computeIfAbsent(name, each -> " " + String.join(" ", words(each)) + " ");
        return wanted.length() > 4 && inWords.contains(wanted);
    }

    /** The words of a text in small letters. */
    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    /** The word of the table that a cell of a choice means by trade use, or empty. */
    static String valueWord(Column<?> column, String cell) {
        String plain = Heading.plain(cell);
        for (Map.Entry<String, List<String>> entry : VALUES.entrySet()) {
            String[] key = entry.getKey().split(": ", 2);
            boolean same = entry.getValue().stream()
                    .anyMatch(
                            word -> Heading.plain(word).equals(plain) && !plain.isEmpty() || word.equals(cell.strip()));
            if (key[0].equals(column.base()) && same) {
                return key[1];
            }
        }
        return "";
    }

    private static Map<String, List<String>> read(String name, int keyParts) {
        Map<String, List<String>> words = new HashMap<>();
        try (InputStream in = Objects.requireNonNull(TradeWords.class.getResourceAsStream(name), name);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] parts = line.split(": ", keyParts + 1);
                    String key = keyParts == 1 ? parts[0] : parts[0] + ": " + parts[1];
                    words.put(key, List.of(parts[keyParts].split("; ", -1)));
                }
            }
            return words;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
