package dev.injectorplanner.app.web.office;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Bars by month from 0, with round figures on the axis, a line across a bar where something else is held against it, the first, the
 * last and the highest written at the bar, every one told by pointer and focus. In a frame of 404 by 196.
 */
public final class MonthBars {
    private static final double LEFT = 46;
    private static final double RIGHT = 400;
    private static final double TOP = 20;
    private static final double FLOOR = 168;
    private static final int LINES = 4;

    private MonthBars() {}

    /**
     * A panel.
     *
     * @param title what it shows
     * @param unit of its figures
     * @param about the picture in words
     * @param ticks lines across with their figures
     * @param bars the months
     */
    public record Panel(String title, String unit, String about, List<Tick> ticks, List<Bar> bars) {}

    /** A line across. */
    public record Tick(double at, String words) {}

    /**
     * A month.
     *
     * @param mark place of what is held against it, below 0 for none
     * @param letter below it
     * @param value its figure in words
     * @param tip month and figures in words
     * @param told whether its figure always stands at the bar
     */
    public record Bar(
            double left,
            double top,
            double width,
            double height,
            double middle,
            double mark,
            String letter,
            String value,
            String tip,
            boolean told) {}

    /** A month's figures: NaN for none known. */
    public record Figure(String letter, String month, double value, double against) {}

    /**
     * Draws.
     *
     * @param against what is held against each, in words, or empty
     * @param words a figure in words
     */
    public static Panel panel(
            String title, String unit, String against, List<Figure> figures, DoubleFunction<String> words) {
        double highest = figures.stream()
                .flatMapToDouble(each -> java.util.stream.DoubleStream.of(each.value(), each.against()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double step = step(highest);
        int lines = Math.max(1, (int) Math.ceil(highest / step - 1e-9));
        double most = step * lines;
        List<Tick> ticks = new ArrayList<>();
        for (int line = 0; line <= lines; line++) {
            ticks.add(new Tick(round(at(line * step, most)), words.apply(line * step)));
        }
        List<Bar> bars = new ArrayList<>();
        double wide = (RIGHT - LEFT) / Math.max(1, figures.size());
        double width = Math.min(24, 0.7 * wide);
        for (int at = 0; at < figures.size(); at++) {
            Figure each = figures.get(at);
            double value = Double.isFinite(each.value()) ? each.value() : 0;
            double middle = LEFT + wide * (at + 0.5);
            boolean marked = Double.isFinite(each.against());
            bars.add(new Bar(
                    round(middle - width / 2),
                    round(at(value, most)),
                    round(width),
                    round(FLOOR - at(value, most)),
                    round(middle),
                    marked ? round(at(each.against(), most)) : -1,
                    each.letter(),
                    Double.isFinite(each.value()) ? words.apply(each.value()) : "",
                    each.month() + ": " + (Double.isFinite(each.value()) ? words.apply(each.value()) : "not known")
                            + (marked ? ", " + against + " " + words.apply(each.against()) : ""),
                    at == 0 || at == figures.size() - 1 || value == highest && highest > 0));
        }
        return new Panel(title, unit, about(title, unit, bars), ticks, bars);
    }

    private static String about(String title, String unit, List<Bar> bars) {
        return title + " by month, " + unit + ": "
                + bars.stream()
                        .map(Bar::tip)
                        .reduce((one, other) -> one + "; " + other)
                        .orElse("none") + ".";
    }

    /** A round step of which at most four reach the highest. */
    private static double step(double highest) {
        if (!(highest > 0)) {
            return 1;
        }
        double ten = Math.pow(10, Math.floor(Math.log10(highest / LINES)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * ten * LINES >= highest) {
                return times * ten;
            }
        }
        return 10 * ten;
    }

    private static double at(double value, double most) {
        return FLOOR - (FLOOR - TOP) * Math.max(0, Math.min(1, value / most));
    }

    private static double round(double value) {
        return Math.rint(value * 10) / 10;
    }
}
