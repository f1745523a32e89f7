package dev.injectorplanner.imports.match;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** Reads the text of a match; what is wrong in it is said with its place and how to fix it. */
public final class MatchText {
    private static final Set<String> KEYS =
            Set.of("source", "table", "numbers", "dates", "two_digit_years", "empty", "ignore", "columns", "fixed");

    private static final Set<String> PARTS = Set.of("to", "values", "names", "confirm", "blank", "shortened");

    private final Path file;
    private final Map<String, Object> top;
    private final Set<String> asks = new HashSet<>();

    private MatchText(Path file, Map<String, Object> top) {
        this.file = file;
        this.top = top;
    }

    /**
     * The match that a text says.
     *
     * @param file where it comes from, for refusals
     * @throws FileRefusedException if it is no match
     */
    public static FileMatch parse(Path file, String text) {
        Object loaded;
        try {
            loaded = yaml().load(text);
        } catch (YAMLException e) {
            String where = String.valueOf(e.getMessage()).replaceAll("(?s).*?line ([0-9]+).*", "line $1");
            throw new FileRefusedException(
                    file,
                    (where.startsWith("line ") ? where + " " : "") + "cannot be read as YAML",
                    "put texts in double quotation marks and indent with spaces, or write the match again",
                    e);
        }
        if (!(loaded instanceof Map<?, ?> map)) {
            throw new FileRefusedException(file, "is not a match", "write it again: match FILE");
        }
        return new MatchText(file, texts(map)).match();
    }

    /** Every plain value is text: no, 1.0 and 2026-01-01 stay what is written. */
    private static Yaml yaml() {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        options.setMaxAliasesForCollections(0);
        DumperOptions dumper = new DumperOptions();
        return new Yaml(new SafeConstructor(options), new Representer(dumper), dumper, options, new Resolver() {
            @Override
            protected void addImplicitResolvers() {
                // none: nothing becomes a number, a day or a truth value
            }
        });
    }

    private static Map<String, Object> texts(Map<?, ?> map) {
        Map<String, Object> texts = new LinkedHashMap<>();
        map.forEach((key, value) -> texts.put(String.valueOf(key), value == null ? "" : value));
        return texts;
    }

    private FileMatch match() {
        for (String key : top.keySet()) {
            if (!KEYS.contains(key)) {
                throw refused(
                        "\"" + key + "\" is not part of a match",
                        "remove it; known are " + new java.util.TreeSet<>(KEYS));
            }
        }
        Table<?> table = table();
        List<ColumnMatch> columns = new ArrayList<>();
        map("columns").forEach((heading, means) -> columns.add(column(table, heading, means)));
        if (columns.isEmpty()) {
            throw refused("has no columns", "name each heading of the file under columns");
        }
        Map<String, String> fixed = new LinkedHashMap<>();
        map("fixed").forEach((column, value) -> fixed.put(heading(table, "fixed", column), String.valueOf(value)));
        String source = text("source", FileRefusedException.nameOf(file));
        NumberForm numbers = numbers();
        DateOrder dates = dates();
        return new FileMatch(
                source, table.name(), columns, numbers, dates, century(), list("empty"), list("ignore"), fixed, asks);
    }

    private Table<?> table() {
        try {
            return Tables.get(text("table", ""));
        } catch (InvalidValueException e) {
            throw refused("table \"" + e.value() + "\" is not known", "write one of " + Tables.names());
        }
    }

    private ColumnMatch column(Table<?> table, String heading, Object means) {
        if (!(means instanceof Map<?, ?> map)) {
            return ColumnMatch.of(heading, meaning(table, heading, String.valueOf(means)));
        }
        Map<String, Object> parts = texts(map);
        Map<String, String> values = new LinkedHashMap<>();
        if (parts.get("values") instanceof Map<?, ?> words) {
            texts(words).forEach((cell, word) -> values.put(cell, String.valueOf(word)));
        }
        choice(heading, parts, "confirm", "column", "yes");
        choice(heading, parts, "blank", "above", "as above");
        choice(heading, parts, "shortened", "shortened", "empty");
        String names = String.valueOf(parts.getOrDefault("names", "exact"));
        if (!Set.of("similar", "exact").contains(names)) {
            throw refused(
                    "names: \"" + names + "\" of column \"" + heading + "\" is not known",
                    "write \"similar\" or \"exact\"");
        }
        for (String key : parts.keySet()) {
            if (!PARTS.contains(key)) {
                throw refused(
                        "\"" + key + "\" of column \"" + heading + "\" is not known",
                        "write one of " + new java.util.TreeSet<>(PARTS));
            }
        }
        return new ColumnMatch(
                heading,
                meaning(table, heading, String.valueOf(parts.getOrDefault("to", ""))),
                values,
                Set.of("as above", FileMatch.ASK).contains(String.valueOf(parts.get("blank"))),
                Set.of("empty", FileMatch.ASK).contains(String.valueOf(parts.get("shortened"))),
                names.equals("similar"));
    }

    private void choice(String heading, Map<String, Object> parts, String key, String ask, String word) {
        String said = String.valueOf(parts.getOrDefault(key, "refuse"));
        if (said.equals(FileMatch.ASK)) {
            asks.add(ask + ":" + heading);
        } else if (!said.equals(word) && !said.equals("refuse")) {
            throw refused(
                    key + ": \"" + said + "\" of column \"" + heading + "\" is not known",
                    "write \"" + word + "\" or \"refuse\"");
        }
    }

    private String meaning(Table<?> table, String heading, String means) {
        if (means.isBlank() || means.equals(MatchFile.NOT_USED)) {
            return "";
        }
        return means.equals(FileMatch.ASK) ? means : heading(table, "column \"" + heading + "\"", means);
    }

    private String heading(Table<?> table, String where, String means) {
        List<String> all = table.columns().stream()
                .flatMap(column -> column.headings().stream())
                .toList();
        if (!all.contains(means)) {
            String near = Heading.nearest(means, all);
            throw refused(
                    where + ": \"" + means + "\" is not a column of " + table.name(),
                    (near.isEmpty() ? "" : "did you mean " + near + "? ") + "write one of " + String.join(", ", all)
                            + ", or \"" + MatchFile.NOT_USED + "\"");
        }
        return means;
    }

    private NumberForm numbers() {
        return switch (text("numbers", "plain")) {
            case "1,234.5" -> NumberForm.POINT;
            case "1.234,5" -> NumberForm.COMMA;
            case "plain" -> NumberForm.UNSTATED;
            case FileMatch.ASK -> {
                asks.add("numbers");
                yield NumberForm.UNSTATED;
            }
            default ->
                throw refused(
                        "numbers: \"" + top.get("numbers") + "\" is not known",
                        "write \"1,234.5\", \"1.234,5\" or \"plain\"");
        };
    }

    private DateOrder dates() {
        return switch (text("dates", "none")) {
            case "dmy" -> DateOrder.DAY_FIRST;
            case "mdy" -> DateOrder.MONTH_FIRST;
            case "none" -> DateOrder.UNSTATED;
            case FileMatch.ASK -> {
                asks.add("dates");
                yield DateOrder.UNSTATED;
            }
            default -> throw refused("dates: \"" + top.get("dates") + "\" is not known", "write dmy, mdy or none");
        };
    }

    private int century() {
        String text = text("two_digit_years", "");
        if (!text.isEmpty() && !text.matches("(19|20)yy")) {
            throw refused("two_digit_years: \"" + text + "\" is not known", "write 20yy, or leave it out");
        }
        return text.isEmpty() ? 0 : Integer.parseInt(text.substring(0, 2));
    }

    private String text(String key, String otherwise) {
        Object value = top.get(key);
        return value == null ? otherwise : String.valueOf(value);
    }

    private List<String> list(String key) {
        Object value = top.get(key);
        return value instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of();
    }

    private Map<String, Object> map(String key) {
        @Nullable Object value = top.get(key);
        return value instanceof Map<?, ?> map ? texts(map) : Map.of();
    }

    private FileRefusedException refused(String reason, String fix) {
        return new FileRefusedException(file, reason, fix);
    }
}
