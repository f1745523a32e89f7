package dev.injectorplanner.app.web.stock;

import dev.injectorplanner.app.web.office.DisplayFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Pieces left week by week as steps, the line at nothing and that of the safety stock, the first short week marked. */
final class StockChart {
    private static final double LEFT = 60;
    private static final double RIGHT = 640;
    private static final double TOP = 16;
    private static final double FLOOR = 200;

    private StockChart() {}

    /**
     * The picture.
     *
     * @param path the steps
     * @param zero height of the line at nothing
     * @param safety height of the safety stock's line, or 0 for none
     * @param shortAt middle of the first short week, or 0
     * @param shortTop height of the steps there
     * @param shortWords what is marked there
     * @param words the picture in words
     */
    record Picture(
            String path,
            double zero,
            double safety,
            double shortAt,
            double shortTop,
            String shortWords,
            List<Tick> down,
            List<Tick> across,
            String words) {}

    record Tick(double at, String words) {}

    static Picture of(Shelf shelf) {
        List<Shelf.Week> weeks = shelf.weeks();
        double least =
                Math.min(0, weeks.stream().mapToDouble(Shelf.Week::end).min().orElse(0));
        double most = Math.max(
                Math.max(shelf.onHand(), shelf.safety()),
                Math.max(1, weeks.stream().mapToDouble(Shelf.Week::end).max().orElse(1)));
        double tick = tick(most - least);
        least = Math.floor(least / tick) * tick;
        most = Math.ceil(most / tick) * tick;
        double step = (RIGHT - LEFT) / Math.max(1, weeks.size());
        StringBuilder path = new StringBuilder();
        List<Tick> across = new ArrayList<>();
        int each = Math.max(1, (int) Math.ceil(weeks.size() / 9.0));
        for (int i = 0; i < weeks.size(); i++) {
            Shelf.Week week = weeks.get(i);
            double x = LEFT + step * i;
            double y = at(week.end(), least, most);
            path.append(String.format(Locale.ROOT, "%s%.1f %.1fH%.1f", i == 0 ? "M" : "L", x, y, x + step));
            if (i % each == 0) {
                across.add(new Tick(x + step / 2, DisplayFormat.week(week.week())));
            }
        }
        Shelf.Week shortage = shelf.shortage().orElse(null);
        return new Picture(
                path.toString(),
                at(0, least, most),
                shelf.safety() > 0 ? at(shelf.safety(), least, most) : 0,
                shortage == null ? 0 : LEFT + step * (weeks.indexOf(shortage) + 0.5),
                shortage == null ? 0 : at(shortage.end(), least, most),
                shortage == null
                        ? ""
                        : DisplayFormat.week(shortage.week()) + ", " + DisplayFormat.pieces(-shortage.end()) + " short",
                down(least, most, tick),
                across,
                words(shelf));
    }

    private static List<Tick> down(double least, double most, double tick) {
        List<Tick> down = new ArrayList<>();
        for (double value = least; value <= most + tick / 2; value += tick) {
            down.add(
                    new Tick(at(value, least, most), DisplayFormat.pieces(value).replace('-', '−')));
        }
        return down;
    }

    /** A round step that gives three to six lines. */
    private static double tick(double span) {
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(1, span))));
        return step * (span / step > 4 ? 2 : span / step > 2 ? 1 : 0.5);
    }

    private static double at(double value, double least, double most) {
        return Math.rint(10 * (FLOOR - (FLOOR - TOP) * (value - least) / (most - least))) / 10;
    }

    private static String words(Shelf shelf) {
        String end = shelf.shortage()
                .map(week -> "the first short week is " + DisplayFormat.week(week.week()) + ", with "
                        + DisplayFormat.pieces(-week.end()) + " missing")
                .orElse("no week is short");
        return "Pieces of " + shelf.part() + " left at the end of each week: " + DisplayFormat.pieces(shelf.onHand())
                + " on hand now, and " + end + ". The figures are in the table below.";
    }
}
