package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.core.units.Figures;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Months as a row of small bars that start at 0, for a cell of a table.
 *
 * @param width of the drawing, which is {@value #HEIGHT} high
 * @param path its bars
 * @param words the same for those who hear it
 */
public record MonthSpark(int width, String path, String words) {
    static final int HEIGHT = 18;
    private static final int STEP = 9;
    private static final int BAR = 7;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.UK);

    /** @param value of a month, not below 0 */
    static MonthSpark of(List<YearMonth> months, ToDoubleFunction<YearMonth> value) {
        double most = months.stream().mapToDouble(value).max().orElse(0);
        StringBuilder path = new StringBuilder();
        for (int at = 0; at < months.size(); at++) {
            double height = most > 0 ? HEIGHT * value.applyAsDouble(months.get(at)) / most : 0;
            path.append(String.format(Locale.ROOT, "M%d %dv-%.1fh%dv%.1fz", at * STEP, HEIGHT, height, BAR, height));
        }
        return new MonthSpark(
                Math.max(1, months.size() * STEP),
                path.toString(),
                months.stream()
                        .map(month -> MONTH.format(month) + " " + Figures.whole(Math.rint(value.applyAsDouble(month))))
                        .collect(Collectors.joining(", ")));
    }
}
