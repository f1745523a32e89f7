package dev.injectorplanner.imports.match;

import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A match as a file that a person can read and correct (YAML 1.2; every value is text). */
public final class MatchFile {
    /** How the names of such files end. */
    public static final String END = ".match.yaml";

    /** Stands for a heading that means nothing here. */
    static final String NOT_USED = "not used";

    private MatchFile() {}

    /** Where the match of a file is written: beside it. */
    public static Path beside(Path file) {
        return file.resolveSibling(FileRefusedException.nameOf(file) + END);
    }

    public static boolean isMatch(Path file) {
        return FileRefusedException.nameOf(file).endsWith(END);
    }

    /** @throws FileRefusedException if it cannot be read as a match */
    public static FileMatch read(Path file) {
        try {
            return MatchText.parse(file, Files.readString(file));
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check the name and that it is text in UTF-8", e);
        }
    }

    /** @param remarks what a person should look at, by the heading that it is about; under an empty name, of the file as a whole */
    public static void write(FileMatch match, Map<String, String> remarks, Path to) {
        try {
            Files.writeString(to, text(match, remarks));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the match to " + to, e);
        }
    }

    /** A name as a command line takes it: in quotation marks where it has blanks. */
    public static String inCommand(String name) {
        return name.contains(" ") ? '"' + name + '"' : name;
    }

    /** The match as text. */
    public static String text(FileMatch match, Map<String, String> remarks) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "# How files with these headings are read. Correct what is wrong, answer what says \"ask\", then load the file with");
        lines.add("#   load --match " + inCommand(match.source() + END) + " " + inCommand(match.source()));
        lines.add("# The match is kept: the next file with these headings is read the same way and nothing is asked.");
        String whole = remarks.getOrDefault("", "");
        if (!whole.isEmpty()) {
            lines.add("# " + whole);
        }
        lines.add("source: " + quoted(match.source()));
        lines.add("table: " + match.table());
        lines.add(said("numbers", numbers(match), "1,234.5 or 1.234,5", remarks));
        lines.add(said("dates", dates(match), "dmy (3/4 is 3 April), mdy or none", remarks));
        if (match.century() > 0) {
            lines.add("two_digit_years: " + quoted(match.century() + "yy"));
        }
        lines.add("empty: " + list(match.emptyWords()) + remark("empty", "words that mean an empty cell", remarks));
        lines.add("ignore: " + list(match.ignored()) + remark("ignore", "signs and units around numbers", remarks));
        lines.add("columns:");
        for (ColumnMatch column : match.columns()) {
            lines.add("  " + quoted(column.heading()) + ": " + column(match, column)
                    + remark(column.heading(), "", remarks));
        }
        lines.add("# The same value for every row, where the file has no such column, such as  origin: \"reman\"");
        lines.add(match.fixed().isEmpty() ? "fixed: {}" : "fixed:");
        new TreeMap<>(match.fixed())
                .forEach((column, value) ->
                        lines.add("  " + column + ": " + quoted(value) + remark(column, "", remarks)));
        return String.join("\n", lines) + "\n";
    }

    private static String numbers(FileMatch match) {
        if (match.asks().contains("numbers")) {
            return FileMatch.ASK;
        }
        return match.numbers() == NumberForm.UNSTATED
                ? "plain"
                : match.numbers().example();
    }

    private static String dates(FileMatch match) {
        if (match.asks().contains("dates")) {
            return FileMatch.ASK;
        }
        return switch (match.dates()) {
            case DAY_FIRST -> "dmy";
            case MONTH_FIRST -> "mdy";
            case UNSTATED -> "none";
        };
    }

    private static String said(String key, String value, String choice, Map<String, String> remarks) {
        return key + ": " + quoted(value) + remark(key, choice, remarks);
    }

    private static String remark(String key, String otherwise, Map<String, String> remarks) {
        String remark = remarks.getOrDefault(key, otherwise).replaceAll("\\s+", " ");
        return remark.isEmpty() ? "" : "  # " + remark;
    }

    private static String column(FileMatch match, ColumnMatch column) {
        String to = column.used() ? column.column() : NOT_USED;
        List<String> parts = new ArrayList<>();
        if (!column.values().isEmpty()) {
            parts.add("values: {"
                    + new TreeMap<>(column.values())
                            .entrySet().stream()
                                    .map(each -> quoted(each.getKey()) + ": " + quoted(each.getValue()))
                                    .collect(Collectors.joining(", "))
                    + "}");
        }
        if (column.namesAlike()) {
            parts.add("names: \"similar\""); // or "exact"
        }
        if (match.asks("column", column)) {
            parts.add("confirm: \"ask\""); // "yes" once a person has seen it
        }
        if (match.asks("above", column)) {
            parts.add("blank: \"ask\""); // "as above" or "refuse"
        } else if (column.asAbove()) {
            parts.add("blank: \"as above\"");
        }
        if (match.asks("shortened", column)) {
            parts.add("shortened: \"ask\""); // "empty" or "refuse"
        } else if (column.dropsShortened()) {
            parts.add("shortened: \"empty\"");
        }
        return parts.isEmpty() ? quoted(to) : "{to: " + quoted(to) + ", " + String.join(", ", parts) + "}";
    }

    private static String list(List<String> words) {
        return words.stream().map(MatchFile::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    /** Double quotes as YAML has them. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || c == '\u0085' || c == '\u00A0' || (c >= '\u2028' && c <= '\u2029') || c == '\uFEFF') {
                quoted.append(String.format("\\u%04X", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
