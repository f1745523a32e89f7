package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.core.replay.outlook.Band;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/** Bars by month with their bands, in a frame of 438 by 196, the figures of its axis on the left. */
final class MonthChart {
    private static final double LEFT = 48;
    private static final double RIGHT = 404;
    private static final double TOP = 12;
    private static final double FLOOR = 168;
    private static final int LINES = 4;
    private static final double MOST_BAR = 22;
    private static final int FEW_MONTHS = 12;
    private static final int EACH_THIRD = 3;

    private MonthChart() {}

    /**
     * A panel.
     *
     * @param title what it shows
     * @param unit of its figures
     * @param total the whole in words
     * @param band its band in words
     * @param about the picture in words, for those who do not see it
     * @param lines lines across with their figures
     * @param bars the months
     */
    record Panel(
            String title, String unit, String total, String band, String about, List<Line> lines, List<Bar> bars) {}

    record Line(double at, String words) {}

    /**
     * One month.
     *
     * @param solid whether the plan has this month; else rules go on
     * @param letter below it, empty where there is no room
     */
    record Bar(
            double left,
            double top,
            double width,
            double height,
            double middle,
            double low,
            double high,
            boolean solid,
            String letter) {}

    static Panel panel(
            String title,
            String unit,
            List<YearMonth> months,
            List<Band> bands,
            Band total,
            int planned,
            DoubleFunction<String> words) {
        double most = most(bands);
        List<Line> lines = new ArrayList<>();
        for (int line = 0; line <= LINES; line++) {
            double value = most * line / LINES;
            lines.add(new Line(round(at(value, most)), words.apply(value)));
        }
        List<Bar> bars = new ArrayList<>();
        double step = (RIGHT - LEFT) / months.size();
        double width = Math.min(MOST_BAR, 0.7 * step);
        for (int m = 0; m < months.size(); m++) {
            Band band = bands.get(m);
            double middle = LEFT + step * (m + 0.5);
            double top = at(band.median(), most);
            bars.add(new Bar(
                    round(middle - width / 2),
                    round(top),
                    round(width),
                    round(FLOOR - top),
                    round(middle),
                    round(at(band.low(), most)),
                    round(at(band.high(), most)),
                    m < planned,
                    letter(months, m)));
        }
        String range = words.apply(total.low()) + " to " + words.apply(total.high());
        String about = title + " by month, middle value and 10 to 90 %: " + told(months, bands, 0, words) + "; "
                + told(months, bands, months.size() - 1, words) + ". All months are in the table of figures.";
        return new Panel(title, unit, words.apply(total.median()), range, about, lines, bars);
    }

    private static String told(List<YearMonth> months, List<Band> bands, int m, DoubleFunction<String> words) {
        Band band = bands.get(m);
        return months.get(m) + " " + words.apply(band.median()) + " (" + words.apply(band.low()) + " to "
                + words.apply(band.high()) + ")";
    }

    private static String letter(List<YearMonth> months, int m) {
        boolean shown = months.size() <= FEW_MONTHS || m % EACH_THIRD == 0;
        return shown ? months.get(m).getMonth().getDisplayName(TextStyle.NARROW, Locale.UK) : "";
    }

    /** A round figure that holds every band, above 0. */
    private static double most(List<Band> bands) {
        double highest = bands.stream().mapToDouble(Band::high).max().orElse(0);
        if (!(highest > 0)) {
            return LINES;
        }
        double step = Math.pow(10, Math.floor(Math.log10(highest / LINES)));
        for (double times : new double[] {1, 2, 2.5, 5, 10}) {
            if (times * step * LINES >= highest) {
                return times * step * LINES;
            }
        }
        return highest;
    }

    private static double at(double value, double most) {
        return FLOOR - (FLOOR - TOP) * Math.min(1, value / most);
    }

    private static double round(double value) {
        return Math.rint(value * 10) / 10;
    }
}
