package dev.injectorplanner.reports.table;

import dev.injectorplanner.reports.workbook.Format;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table, wherever it is shown: a sheet, a page, a mail, the terminal.
 *
 * @param <R> what a row is of
 * @param heading its heading without the unit
 * @param unit unit of its figures
 * @param format how its cells are written
 * @param width its width on a sheet, characters
 * @param total whether a sheet's line of totals sums it
 * @param value the value of a row, which may be a formula of a sheet; null for an empty cell
 */
public record TableColumn<R>(
        String heading, Unit unit, Format format, int width, boolean total, Function<R, @Nullable Object> value) {

    /** A short text, or what is written as one. */
    public static <R> TableColumn<R> text(String heading, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, Unit.NONE, Format.TEXT, width, false, value);
    }

    /** A sentence, which takes several lines of its cell. */
    public static <R> TableColumn<R> wrapped(String heading, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, Unit.NONE, Format.WRAPPED, width, false, value);
    }

    public static <R> TableColumn<R> date(String heading, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, Unit.NONE, Format.DATE, width, false, value);
    }

    /** A whole number of something. */
    public static <R> TableColumn<R> count(String heading, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, Unit.NONE, Format.WHOLE, width, false, value);
    }

    /** A figure with one decimal. */
    public static <R> TableColumn<R> figure(String heading, Unit unit, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, unit, Format.ONE_DECIMAL, width, false, value);
    }

    /** An amount in the site's currency. */
    public static <R> TableColumn<R> money(String heading, int width, Function<R, @Nullable Object> value) {
        return new TableColumn<>(heading, Unit.MONEY, Format.TWO_DECIMALS, width, false, value);
    }

    public TableColumn<R> summed() {
        return new TableColumn<>(heading, unit, format, width, true, value);
    }

    /** The same with other values, such as a sheet's formulas over them. */
    public TableColumn<R> valued(Function<R, @Nullable Object> other) {
        return new TableColumn<>(heading, unit, format, width, total, other);
    }

    public TableColumn<R> written(Format other) {
        return new TableColumn<>(heading, unit, other, width, total, value);
    }

    /** The same with another width on a sheet. */
    public TableColumn<R> wide(int other) {
        return new TableColumn<>(heading, unit, format, other, total, value);
    }

    /** The same under a heading that says all. */
    public TableColumn<R> headed(String other) {
        return new TableColumn<>(other, unit == Unit.MONEY ? unit : Unit.NONE, format, width, total, value);
    }

    /** {@code Drained, l}. */
    public String headingWithUnit() {
        return unit.sign().isEmpty() ? heading : heading + ", " + unit.sign();
    }

    /** Whether it stands at the right. */
    public boolean isFigure() {
        return format.isFigure();
    }

    /** A row's cell in plain words: ISO dates, no thousands apart. */
    public String plain(R row) {
        return PlainCell.of(value.apply(row), format);
    }
}
