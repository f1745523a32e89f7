package dev.injectorplanner.imports.table;

import dev.injectorplanner.imports.cell.CellKind;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One table: its columns, its natural key, and how a row becomes a record.
 *
 * @param <R> record of the table
 */
public final class Table<R> {
    private final String name;
    private final Class<R> rowType;
    private final List<Column<R>> columns;
    private final List<String> keyColumns;
    private final Function<R, List<Object>> key;
    private final Function<RowValues, R> maker;

    private Table(Builder<R> builder, Function<RowValues, R> maker) {
        this.name = builder.name;
        this.rowType = builder.rowType;
        this.columns = List.copyOf(builder.columns);
        this.keyColumns = builder.keyColumns;
        this.key = builder.key;
        this.maker = maker;
    }

    static <R> Builder<R> named(String name, Class<R> rowType) {
        return new Builder<>(name, rowType);
    }

    /** Such as {@code engine_families}. */
    public String name() {
        return name;
    }

    public Class<R> rowType() {
        return rowType;
    }

    /** In the order of the template. */
    public List<Column<R>> columns() {
        return columns;
    }

    /** The column that a canonical name, a name with another unit, or a name without its unit means. */
    public Optional<Column<R>> findColumn(String named) {
        return columns.stream()
                .filter(c -> c.name().equals(named)
                        || c.base().equals(named)
                        || c.headings().contains(named))
                .findFirst();
    }

    /** Names of the columns that tell rows apart. */
    public List<String> keyColumns() {
        return keyColumns;
    }

    /**
     * What tells a row from all others of the table, one value a {@link #keyColumns key column}. A cell that may be
     * empty (cylinder of a fault, step of a job part, family of a rule) gives 0 or an empty text.
     */
    public List<Object> key(R row) {
        return key.apply(row);
    }

    /** The key of a row as a person reads it. */
    public String keyText(R row) {
        return String.join(", ", key(row).stream().map(String::valueOf).toList());
    }

    /** A row's cells in the order of {@link #columns}, as the writer writes them. */
    public List<String> cells(R row) {
        return columns.stream().map(column -> column.write(row)).toList();
    }

    public R make(RowValues values) {
        return maker.apply(values);
    }

    @Override
    public String toString() {
        return name;
    }

    /** Puts a table together. */
    static final class Builder<R> {
        private final String name;
        private final Class<R> rowType;
        private final List<Column<R>> columns = new ArrayList<>();
        private List<String> keyColumns = List.of();
        private Function<R, List<Object>> key = row -> List.of();

        private Builder(String name, Class<R> rowType) {
            this.name = name;
            this.rowType = rowType;
        }

        <T> Builder<R> required(String column, CellKind<T> kind, Function<R, @Nullable T> getter, String description) {
            columns.add(new Column<>(column, true, description, kind, List.of(), getter));
            return this;
        }

        <T> Builder<R> optional(String column, CellKind<T> kind, Function<R, @Nullable T> getter, String description) {
            columns.add(new Column<>(column, false, description, kind, List.of(), getter));
            return this;
        }

        /** A measured column: its heading says the unit, the first unit is how it is kept. */
        Builder<R> measured(
                String base,
                List<ColumnUnit> units,
                boolean required,
                Function<R, @Nullable Double> getter,
                String text) {
            String column = base + "_" + units.get(0).suffix();
            columns.add(new Column<>(column, required, text, CellKinds.NUMBER, units, getter));
            return this;
        }

        Builder<R> key(List<String> names, Function<R, List<Object>> of) {
            keyColumns = List.copyOf(names);
            key = of;
            return this;
        }

        Table<R> made(Function<RowValues, R> maker) {
            return new Table<>(this, maker);
        }
    }
}
