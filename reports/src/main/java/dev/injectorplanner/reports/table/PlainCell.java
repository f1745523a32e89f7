package dev.injectorplanner.reports.table;

import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.Words;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Values as plain text, for mails and the terminal. */
final class PlainCell {
    private PlainCell() {}

    static String of(@Nullable Object value, Format format) {
        if (value == null) {
            return "";
        }
        Object shown = value instanceof Formula formula ? Double.valueOf(formula.value()) : value;
        if (!(shown instanceof Number number)) {
            return String.valueOf(shown);
        }
        return switch (format) {
            case WHOLE -> String.format(Locale.ROOT, "%.0f", number.doubleValue());
            case ONE_DECIMAL -> String.format(Locale.ROOT, "%.1f", number.doubleValue());
            case TWO_DECIMALS -> String.format(Locale.ROOT, "%.2f", number.doubleValue());
            case QUANTITY -> Words.quantity(number.doubleValue());
            case TEXT, WRAPPED, DATE -> String.valueOf(shown);
        };
    }
}
