package dev.injectorplanner.imports.cell;

/**
 * What the cells of a column hold, and how it is read and written.
 *
 * @param <T> type of the value
 */
public interface CellKind<T> {
    /**
     * Makes a value of a cell.
     *
     * @param text the cell, not blank, without spaces at its ends
     * @throws dev.injectorplanner.core.check.InvalidValueException if it cannot be read, or can be read two ways
     */
    T read(String text, CellContext context);

    /** The one written form, which {@link #read} takes back unchanged. */
    String write(T value);

    /** Whether a heading may say the order of day and month. */
    default boolean holdsDates() {
        return false;
    }

    /** Whether the cells are numbers, in which signs of thousands and decimals matter. */
    default boolean holdsNumbers() {
        return false;
    }
}
