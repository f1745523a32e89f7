package dev.injectorplanner.app.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A cause in words: one line where it cost one row, else the count, the values, the first places and one fix. */
public final class CauseText {
    private CauseText() {}

    /** The first line says what is wrong, those that follow belong to it. */
    public static List<String> lines(Cause cause) {
        List<String> lines = new ArrayList<>();
        if (cause.rows() <= 1) {
            String takes = takesWith(cause);
            lines.add(where(cause) + value(cause) + ": " + cause.reason() + ". " + takes + "Fix: " + cause.fix() + ".");
            return lines;
        }
        lines.add(String.format(
                Locale.ROOT,
                "%,d rows of %s%s%s: %s",
                cause.rows(),
                cause.file(),
                cause.sheet() == null ? "" : ", sheet \"" + cause.sheet() + "\"",
                cause.column().isEmpty() ? "" : ", " + cause.column(),
                cause.reason()));
        lines.add("first in " + places(cause) + values(cause));
        String takes = takesWith(cause);
        if (!takes.isEmpty()) {
            lines.add(takes.strip());
        }
        lines.add("Fix: " + cause.fix() + ".");
        return lines;
    }

    /** {@code lines 3, 7, 11} of a text file, {@code F3, F7} of a sheet. */
    private static String places(Cause cause) {
        String first = cause.places().get(0);
        String kind = first.startsWith("line ") ? "line " : first.startsWith("row ") ? "row " : "";
        if (kind.isEmpty() || cause.places().size() == 1) {
            return String.join(", ", cause.places());
        }
        return kind.strip() + "s "
                + cause.places().stream()
                        .map(place -> place.substring(kind.length()))
                        .collect(Collectors.joining(", "));
    }

    private static String where(Cause cause) {
        return cause.file()
                + (cause.sheet() == null ? "" : ", sheet \"" + cause.sheet() + "\"")
                + (cause.places().isEmpty() ? "" : ", " + cause.places().get(0))
                + (cause.column().isEmpty() ? "" : ", " + cause.column());
    }

    private static String value(Cause cause) {
        if (cause.column().isEmpty() || cause.values().isEmpty()) {
            return "";
        }
        String value = cause.values().get(0).text();
        return value.isEmpty() ? " (empty)" : " \"" + value + "\"";
    }

    private static String values(Cause cause) {
        boolean said = cause.column().isEmpty()
                || cause.values().stream().allMatch(value -> value.text().isEmpty());
        if (said) {
            return "";
        }
        String values = cause.values().stream()
                .map(value -> (value.text().isEmpty() ? "(empty)" : "\"" + value.text() + "\"")
                        + (value.rows() > 1 && value.rows() < cause.rows()
                                ? String.format(Locale.ROOT, " %,d times", value.rows())
                                : ""))
                .collect(Collectors.joining(", "));
        return "; values: " + values
                + (cause.moreValues() > 0 ? String.format(Locale.ROOT, " and %,d more", cause.moreValues()) : "");
    }

    private static String takesWith(Cause cause) {
        if (cause.takesWith().isEmpty()) {
            return "";
        }
        Map<String, Long> sorted = new TreeMap<>(cause.takesWith());
        return sorted.entrySet().stream()
                .map(table -> String.format(Locale.ROOT, "%,d of %s", table.getValue(), table.getKey()))
                .collect(Collectors.joining(", ", "Refused with it, rows that refer to it: ", ". "));
    }
}
