package dev.injectorplanner.imports.match;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.CellContext;
import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where the columns of a matched file stand.
 *
 * @param places by column, in the order of the table
 */
public record MatchedLayout(List<MatchedColumn> places, List<Integer> asAbove) {
    /**
     * One column.
     *
     * @param heading the column's name with the unit of the file
     * @param at positions of its cells, from 0; several are joined by a blank; none: the value is fixed
     * @param fixed the value of every row, or empty
     * @param namesAlike whether its cells mean the stored names that differ in case, spaces and signs alone
     */
    public record MatchedColumn(
            Column<?> column,
            String heading,
            List<Integer> at,
            @Nullable ColumnUnit unit,
            CellForm form,
            String fixed,
            boolean namesAlike) {}

    /**
     * The layout of a file of the match's source.
     *
     * @throws InvalidValueException if the match names a column that the table does not have
     */
    public static MatchedLayout of(FileMatch match, Table<?> table, List<String> headings) {
        List<String> named = FileMatch.numbered(headings);
        Map<String, ColumnMatch> meaning = new LinkedHashMap<>();
        match.columns().forEach(column -> meaning.put(plain(column.heading()), column));
        List<MatchedColumn> places = new ArrayList<>();
        List<Integer> above = new ArrayList<>();
        for (Column<?> column : table.columns()) {
            List<Integer> at = new ArrayList<>();
            ColumnMatch first = null;
            for (int i = 0; i < named.size(); i++) {
                ColumnMatch means = meaning.get(plain(named.get(i)));
                if (means != null && column.headings().contains(means.column())) {
                    at.add(i);
                    first = first == null ? means : first;
                    if (means.asAbove()) {
                        above.add(i);
                    }
                }
            }
            if (first != null) {
                places.add(new MatchedColumn(
                        column,
                        first.column(),
                        at,
                        unit(column, first.column()),
                        form(match, column, first),
                        "",
                        first.namesAlike()));
            } else {
                addFixed(match, column, places);
            }
        }
        return new MatchedLayout(List.copyOf(places), List.copyOf(above));
    }

    private static void addFixed(FileMatch match, Column<?> column, List<MatchedColumn> places) {
        for (String heading : column.headings()) {
            String value = match.fixed().get(heading);
            if (value != null) {
                places.add(new MatchedColumn(
                        column, heading, List.of(), unit(column, heading), CellForm.TEMPLATE, value, false));
                return;
            }
        }
    }

    private static String plain(String heading) {
        return dev.injectorplanner.imports.cell.Heading.plain(heading);
    }

    private static @Nullable ColumnUnit unit(Column<?> column, String heading) {
        return column.units().stream()
                .filter(unit -> heading.equals(column.base() + "_" + unit.suffix()))
                .findFirst()
                .orElse(null);
    }

    private static CellForm form(FileMatch match, Column<?> column, ColumnMatch means) {
        Map<String, String> values = means.values().entrySet().stream()
                .collect(Collectors.toMap(
                        each -> each.getKey().toLowerCase(Locale.ROOT), Map.Entry::getValue, (a, b) -> a));
        Set<String> empty = match.emptyWords().stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> !means(column, word))
                .collect(Collectors.toSet());
        ColumnUnit unit = unit(column, means.column());
        List<String> ignored = match.ignored().stream()
                .map(sign -> sign.toLowerCase(Locale.ROOT))
                .filter(sign -> isOf(unit, sign))
                .sorted((a, b) -> Integer.compare(b.length(), a.length()))
                .toList();
        return new CellForm(
                match.numbers(),
                column.kind().holdsNumbers(),
                empty,
                ignored,
                values,
                column.kind().holdsDates() ? match.century() : 0,
                means.dropsShortened(),
                false,
                UnaryOperator.identity());
    }

    /** A name of another unit is never ignored: 482,100 km are not 482,100 miles. */
    private static boolean isOf(@Nullable ColumnUnit unit, String sign) {
        return unit != null && unit.isNamed(sign)
                || Arrays.stream(ColumnUnit.values()).noneMatch(each -> each.isNamed(sign));
    }

    /** Whether a word that means empty elsewhere says something in this column, as "unknown" does for what was found. */
    private static boolean means(Column<?> column, String word) {
        if (column.kind() == (Object) CellKinds.TEXT || column.kind().holdsNumbers()) {
            return false;
        }
        try {
            column.kind().read(word, new CellContext(column.name(), DateOrder.UNSTATED, "", truck -> null));
            return true;
        } catch (InvalidValueException e) {
            return false;
        }
    }
}
