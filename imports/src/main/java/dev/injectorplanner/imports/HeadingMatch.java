package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Headings checked against the columns of a table.
 *
 * @param <R> record of the table
 */
final class HeadingMatch<R> {
    private final Table<R> table;
    private final List<Layout.Place> places = new ArrayList<>();
    private final List<Integer> unknown = new ArrayList<>();
    private final List<Twice> twice = new ArrayList<>();
    private final List<Integer> withoutUnit = new ArrayList<>();

    /** A column that two headings name. */
    record Twice(String column, int first, int second) {}

    HeadingMatch(Table<R> table, List<String> headings, DateOrder dates) {
        this.table = table;
        for (int at = 0; at < headings.size(); at++) {
            String plain = Heading.plain(headings.get(at));
            if (!plain.isEmpty() && !RefusedRowsFile.isOwn(headings.get(at))) {
                place(plain, at, dates);
            }
        }
        for (Column<R> column : table.columns()) { // in the table's order
            Layout.Place place = placeOf(column);
            if (place != null) {
                places.remove(place);
                places.add(place);
            }
        }
    }

    private void place(String plain, int at, DateOrder dates) {
        for (Column<R> column : table.columns()) {
            Layout.Place place = match(column, plain, at, dates);
            if (place != null) {
                Layout.Place before = placeOf(column);
                if (before != null) {
                    twice.add(new Twice(column.name(), before.at(), at));
                } else {
                    places.add(place);
                }
                return;
            }
        }
        boolean saysNoUnit = table.columns().stream()
                .anyMatch(c -> !c.units().isEmpty() && Heading.plain(c.base()).equals(plain));
        (saysNoUnit ? withoutUnit : unknown).add(at);
    }

    private static Layout.@Nullable Place match(Column<?> column, String plain, int at, DateOrder dates) {
        String base = Heading.plain(column.base());
        if (!plain.startsWith(base)) {
            return null;
        }
        String end = plain.substring(base.length());
        for (ColumnUnit unit : column.units()) {
            if (unit.isNamed(end)) {
                String heading = column.base() + "_" + unit.suffix();
                return new Layout.Place(column.name(), column.base(), heading, at, unit, dates);
            }
        }
        if (!column.units().isEmpty()) {
            return null;
        }
        DateOrder said = end.isEmpty() ? dates : saidBy(end);
        boolean named = end.isEmpty() || (column.kind().holdsDates() && said != DateOrder.UNSTATED);
        return named ? new Layout.Place(column.name(), column.name(), column.name(), at, null, said) : null;
    }

    private static DateOrder saidBy(String end) {
        return switch (end) {
            case "dmy" -> DateOrder.DAY_FIRST;
            case "mdy" -> DateOrder.MONTH_FIRST;
            default -> DateOrder.UNSTATED;
        };
    }

    private Layout.@Nullable Place placeOf(Column<R> column) {
        return places.stream()
                .filter(place -> place.column().equals(column.name()))
                .findFirst()
                .orElse(null);
    }

    /** Where the known columns stand, in the order of the table. */
    List<Layout.Place> places() {
        return places;
    }

    /** Positions of headings that name no column. */
    List<Integer> unknown() {
        return unknown;
    }

    /** Positions of headings that name a measured column without its unit. */
    List<Integer> withoutUnit() {
        return withoutUnit;
    }

    List<Twice> twice() {
        return twice;
    }

    /** Required columns that no heading names. */
    List<Column<R>> missing() {
        return table.columns().stream()
                .filter(column -> column.required() && placeOf(column) == null)
                .toList();
    }

    /** Known columns that no heading names. */
    List<String> free() {
        return table.columns().stream()
                .filter(column -> placeOf(column) == null)
                .flatMap(column -> column.headings().stream())
                .toList();
    }
}
