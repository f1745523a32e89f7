package dev.injectorplanner.imports.table;

import dev.injectorplanner.imports.cell.CellKind;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One column of a table.
 *
 * @param <R> record of the table
 */
public final class Column<R> {
    private final String name;
    private final boolean required;
    private final String description;
    private final CellKind<Object> kind;
    private final List<ColumnUnit> units;
    private final Function<R, @Nullable Object> getter;

    @SuppressWarnings("unchecked") // a column's kind and getter are given together, of one type
    <T> Column(
            String name,
            boolean required,
            String description,
            CellKind<T> kind,
            List<ColumnUnit> units,
            Function<R, @Nullable T> getter) {
        this.name = name;
        this.required = required;
        this.description = description;
        this.kind = (CellKind<Object>) kind;
        this.units = units;
        this.getter = row -> getter.apply(row);
    }

    /** Canonical heading, such as {@code odometer_km}. */
    public String name() {
        return name;
    }

    /** The name without its unit, such as {@code odometer}: what the domain's refusals call it. */
    public String base() {
        return units.isEmpty() ? name : name.substring(0, name.lastIndexOf('_'));
    }

    /** Whether a file must have the column and every row a value in it. */
    public boolean required() {
        return required;
    }

    /** What it holds, in words, with what an empty cell means where it may be empty. */
    public String description() {
        return description;
    }

    /** The headings that name it, one a unit: {@code odometer_km, odometer_mi}. The first one is the canonical. */
    public List<String> headings() {
        return units.isEmpty()
                ? List.of(name)
                : units.stream().map(unit -> base() + "_" + unit.suffix()).toList();
    }

    public List<ColumnUnit> units() {
        return units;
    }

    public CellKind<Object> kind() {
        return kind;
    }

    /** The cell of a row in its written form; empty for a value that is not there. */
    String write(R row) {
        Object value = getter.apply(row);
        return value == null ? "" : kind.write(value);
    }

    @Override
    public String toString() {
        return name;
    }
}
