package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.GroupedHeadings;
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

/** What offices call columns and the words in them. */
final class TradeWords {
    private static final Map<String, List<String>> COLUMNS = read("trade-words.txt", 1);
    private static final Map<String, List<String>> VALUES = read("value-words.txt", 2);

    private static final Set<String> HOURS = Set.of("h", "hr", "hrs", "hour", "hours");
    private static final Set<String> METERS =
            Set.of("", "odometer", "meter", "meterreading", "engine", "eng", "reading", "run", "running");
    private static final double BELOW_A_GROUP = 0.85;
    private static final double NAMED = 0.9;

    private TradeWords() {}

    /** How well a heading names a column, 0 to 1, by its words alone; below a group by its own words nearly as well. */
    static double likeness(String heading, Table<?> table, Column<?> column) {
        double whole = likenessOf(heading, table, column);
        String below = GroupedHeadings.below(heading);
        return below.equals(heading) || isUnitOrHours(below)
                ? whole
                : Math.max(whole, BELOW_A_GROUP * likenessOf(below, table, column));
    }

    private static double likenessOf(String heading, Table<?> table, Column<?> column) {
        boolean hours = words(heading).stream().anyMatch(HOURS::contains);
        if (hours && column.units().equals(ColumnUnit.DISTANCE)) {
            return 0; // a meter that counts hours is no odometer
        }
        String plain = Heading.plain(heading);
        if (plain.isEmpty()) {
            return 0;
        }
        List<String> own = new ArrayList<>(column.headings());
        own.add(column.base());
        if (own.stream().anyMatch(name -> Heading.plain(name).equals(plain))) {
            return 1;
        }
        boolean hoursOfEngine = hours && column.base().endsWith("engine_hours");
        String bare = column.units().isEmpty() && !hoursOfEngine ? plain : withoutUnit(heading);
        if (hoursOfEngine && METERS.contains(bare)) {
            return NAMED;
        }
        double best = 0;
        for (String name : names(table, column)) {
            String word = Heading.plain(name);
            if (word.equals(plain)) {
                return 0.95;
            }
            if (!bare.isEmpty() && word.equals(bare)) {
                best = Math.max(best, NAMED);
            } else if (holds(heading, name)) {
                best = Math.max(best, 0.5 + 0.3 * word.length() / plain.length());
            }
        }
        return best;
    }

    private static List<String> names(Table<?> table, Column<?> column) {
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

    private static String withoutUnit(String heading) {
        StringBuilder kept = new StringBuilder();
        for (String word : words(heading)) {
            boolean isUnit = HOURS.contains(word);
            for (ColumnUnit unit : ColumnUnit.values()) {
                isUnit |= unit.isNamed(word);
            }
            kept.append(isUnit ? "" : word);
        }
        return kept.toString();
    }

    /** Whether the words of a name stand in the heading one after the other. */
    private static boolean holds(String heading, String name) {
        String words = " " + String.join(" ", words(heading)) + " ";
        String wanted = " " + String.join(" ", words(name)) + " ";
        return wanted.length() > 4 && words.contains(wanted);
    }

    private static List<String> words(String text) {
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
