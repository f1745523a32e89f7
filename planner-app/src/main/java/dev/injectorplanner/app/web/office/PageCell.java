package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Format;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Headings and values of a table as a page shows them: in the site's units and form. */
final class PageCell {
    private final SiteUnits units;

    PageCell(SiteUnits units) {
        this.units = units;
    }

    String heading(TableColumn<?> column) {
        return switch (column.unit()) {
            case NONE, MONEY -> column.heading();
            case LITRES -> column.heading() + " " + units.volumeUnit();
            case HOURS, PERCENT, CELSIUS ->
                column.heading() + " " + column.unit().sign();
        };
    }

    <R> String text(TableColumn<R> column, R row) {
        @Nullable Object value = column.value().apply(row);
        if (value == null) {
            return "";
        }
        if (value instanceof LocalDate day) {
            return DisplayFormat.shortDate(day);
        }
        if (!(value instanceof Number number)) {
            return column.format() == Format.WRAPPED ? units.sentence(String.valueOf(value)) : String.valueOf(value);
        }
        double figure = number.doubleValue();
        if (column.unit() == Unit.LITRES && units.volume() != SiteUnits.Volume.LITRES) {
            return units.volumeFigure(figure);
        }
        if (column.unit() == Unit.MONEY) {
            return DisplayFormat.money(figure);
        }
        return switch (column.format()) {
            case WHOLE -> Figures.whole(figure);
            case QUANTITY -> DisplayFormat.pieces(figure);
            case ONE_DECIMAL, TWO_DECIMALS, TEXT, WRAPPED, DATE -> DisplayFormat.tenth(figure);
        };
    }
}
