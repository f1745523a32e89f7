package dev.injectorplanner.imports;

import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to do about a file that no table and no kept match fits. */
final class NoTable {
    private static final int MOST_NAMED = 5;

    private NoTable() {}

    static FileRefusedException of(Path file, List<String> headings, ReadSettings settings) {
        String match = "match its headings once: match FILE";
        return settings.nearMatch(headings)
                .map(near -> new FileRefusedException(
                        file,
                        "is not quite like " + near.source() + ", whose headings are matched; new here: "
                                + named(near.unknownOf(headings)),
                        match))
                .or(() -> nearest(headings)
                        .map(table -> new FileRefusedException(
                                file,
                                "matches no table; the nearest is " + table.name() + ", of whose columns it has no "
                                        + missing(table, headings),
                                match + "; or rename them and load it with --as " + table.name())))
                .orElseGet(() -> new FileRefusedException(
                        file,
                        "matches no table, neither by its name nor by its headings",
                        match + "; or say which table it is, such as --as readings"));
    }

    private static String named(List<String> headings) {
        return headings.isEmpty()
                ? "none, but some are missing"
                : headings.stream()
                        .limit(MOST_NAMED)
                        .map(each -> "\"" + each + "\"")
                        .collect(Collectors.joining(", "));
    }

    /** The table of which most required columns are there, at least half of them and more than one. */
    private static Optional<Table<?>> nearest(List<String> headings) {
        return Tables.ALL.stream()
                .filter(table -> present(table, headings) >= 2 && 2 * present(table, headings) >= required(table))
                .max(Comparator.comparingDouble(table -> present(table, headings) / (double) required(table)));
    }

    private static long required(Table<?> table) {
        return table.columns().stream().filter(Column::required).count();
    }

    private static <R> long present(Table<R> table, List<String> headings) {
        return required(table) - match(table, headings).missing().size();
    }

    private static <R> String missing(Table<R> table, List<String> headings) {
        return match(table, headings).missing().stream().map(Column::name).collect(Collectors.joining(", "));
    }

    private static <R> HeadingMatch<R> match(Table<R> table, List<String> headings) {
        return new HeadingMatch<>(table, headings, dev.injectorplanner.imports.cell.DateOrder.UNSTATED);
    }
}
