package dev.injectorplanner.imports.table;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cells of one row by the canonical names of their columns, already of the right type. */
public final class RowValues {
    private final Map<String, Object> byColumn = new HashMap<>();

    public void put(String column, Object value) {
        byColumn.put(column, value);
    }

    public void clear() {
        byColumn.clear();
    }

    /** The value of a required column. */
    @SuppressWarnings("unchecked") // the column's kind makes values of the type that the record asks for
    <T> T get(String column) {
        Object value = byColumn.get(column);
        if (value == null) {
            throw new IllegalStateException("column " + column + " is read as required but is not marked so");
        }
        return (T) value;
    }

    /** The value of an optional column, or null for an empty cell. */
    @SuppressWarnings("unchecked") // as above
    <T> @Nullable T find(String column) {
        return (T) byColumn.get(column);
    }

    /** The value of an optional column, or what an empty cell stands for. */
    <T> T or(String column, T ifEmpty) {
        T value = find(column);
        return value == null ? ifEmpty : value;
    }
}
