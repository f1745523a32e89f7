package dev.injectorplanner.app.web.chart;

import dev.injectorplanner.app.web.chart.Chart.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Draws one picture, mark by mark, in the figures that it is about. */
public final class Plot {
    /** Room that a value's figure takes for each letter. */
    private static final double LETTER = 7.4;

    private static final double LABEL_RISE = 6;
    private static final double END = 3.5;
    private static final double FAULT_RISE = 18;
    private static final double FOOT = 18;
    private static final double FIRST_ROW = 42;
    private static final double ROW = 24;

    private final Frame frame;
    private final Axis x;
    private final Axis y;
    private final List<Chart.Mark> marks = new ArrayList<>();
    private final List<Chart.Label> labels = new ArrayList<>();
    private final List<Chart.Slot> slots = new ArrayList<>();
    private final List<Chart.Legend> legend = new ArrayList<>();
    private String across = "";
    private double lastTold = Double.NEGATIVE_INFINITY;

    public Plot(Frame frame, Axis x, Axis y) {
        this.frame = frame;
        this.x = x;
        this.y = y;
    }

    /** A point in the figures of the axes. */
    public record Spot(double x, double y) {}

    /** A value told at a place: where it stands, and its figure. */
    public record Value(double y, String words) {}

    private double right(double value) {
        return frame.left() + (frame.right() - frame.left()) * x.at(value);
    }

    private double down(double value) {
        return frame.floor() - (frame.floor() - frame.top()) * y.at(value);
    }

    private static String number(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }

    private static String at(double across, double down) {
        return number(across) + " " + number(down);
    }

    private Plot mark(Ink ink, String path) {
        marks.add(new Chart.Mark(ink, path));
        return this;
    }

    /** A bar from the axis's 0, or its floor, of so wide a share of a place. */
    public Plot bar(Ink ink, double place, double share, double value) {
        double from = right(place - share / 2);
        double wide = right(place + share / 2) - from;
        double zero = down(Math.max(y.from(), Math.min(y.to(), 0)));
        return mark(
                ink,
                "M" + at(from, zero) + "V" + number(down(value)) + "h" + number(wide) + "V" + number(zero)
                        + (ink == Ink.BAR ? "Z" : ""));
    }

    /** A line through points. */
    public Plot line(Ink ink, List<Spot> spots) {
        return spots.isEmpty() ? this : mark(ink, path(spots, false));
    }

    /** Steps: each value holds until the next point. */
    public Plot steps(Ink ink, List<Spot> spots) {
        return spots.isEmpty() ? this : mark(ink, path(spots, true));
    }

    private String path(List<Spot> spots, boolean steps) {
        StringBuilder path = new StringBuilder();
        for (Spot spot : spots) {
            String place = at(right(spot.x()), down(spot.y()));
            path.append(path.isEmpty() ? "M" + place : steps ? "H" + place.replace(" ", "V") : "L" + place);
        }
        return path.toString();
    }

    /** The field between two lines that run from left to right. */
    public Plot band(List<Spot> upper, List<Spot> lower) {
        StringBuilder path = new StringBuilder(path(upper, false));
        for (int each = lower.size() - 1; each >= 0; each--) {
            path.append('L')
                    .append(at(right(lower.get(each).x()), down(lower.get(each).y())));
        }
        return mark(Ink.BAND, path.append('Z').toString());
    }

    /** A line across the field at a value, with what it is written on it; empty words write nothing. */
    public Plot limit(Ink ink, double value, String words) {
        if (!words.isEmpty()) {
            labels.add(new Chart.Label(frame.right(), down(value) - LABEL_RISE, "end", false, words));
        }
        return mark(ink, "M" + at(frame.left(), down(value)) + "H" + number(frame.right()));
    }

    /** A short line across one place. */
    public Plot notch(Ink ink, double place, double share, double value) {
        return mark(ink, "M" + at(right(place - share / 2), down(value)) + "H" + number(right(place + share / 2)));
    }

    /** A line up and down at a place, between two values; a range has ends. */
    public Plot upright(Ink ink, double place, double low, double high) {
        String ends = ink == Ink.RANGE || ink == Ink.INTERVAL
                ? "M" + at(right(place) - END, down(low)) + "h" + number(2 * END) + "M"
                        + at(right(place) - END, down(high)) + "h" + number(2 * END)
                : "";
        return mark(ink, "M" + at(right(place), down(low)) + "V" + number(down(high)) + ends);
    }

    /** A point. */
    public Plot dot(double place, double value, double radius) {
        return mark(Ink.DOT, round(right(place), down(value), radius));
    }

    /** A fault, just above the field. */
    public Plot fault(double place) {
        return mark(Ink.FAULT, "M" + at(right(place), frame.top() - FAULT_RISE) + "l5 9h-10z");
    }

    /** Names a row of events below the field, counted from 0. */
    public Plot row(int row, String name) {
        labels.add(new Chart.Label(frame.left() - LABEL_RISE, rowAt(row) + 4, "end", false, name));
        return mark(Ink.RULE, "M" + at(frame.left(), rowAt(row)) + "H" + number(frame.right()));
    }

    private double rowAt(int row) {
        return frame.floor() + FIRST_ROW + ROW * row;
    }

    /** An event in a row: a point, a fault's triangle, or a short line. */
    public Plot event(Ink ink, int row, double place) {
        double across = right(place);
        double down = rowAt(row);
        return switch (ink) {
            case DOT -> mark(ink, round(across, down, 4.5));
            case FAULT -> mark(ink, "M" + at(across, down - 5) + "l5 9h-10z");
            default -> mark(ink, "M" + at(across, down - 5) + "v10");
        };
    }

    private static String round(double across, double down, double radius) {
        String r = number(radius);
        return "M" + at(across - radius, down) + "a" + r + " " + r + " 0 1 0 " + number(2 * radius) + " 0a" + r + " "
                + r + " 0 1 0 " + number(-2 * radius) + " 0";
    }

    /** Words at a point, kept inside the picture. */
    public Plot label(double place, double value, boolean strong, String words) {
        labels.add(placed(right(place), down(value) - LABEL_RISE, strong, words));
        return this;
    }

    private Chart.Label placed(double across, double down, boolean strong, String words) {
        double half = LETTER * words.length() / 2;
        String anchor = across + half > frame.width() ? "end" : across - half < frame.left() ? "start" : "middle";
        return new Chart.Label(round(across), round(Math.max(12, down)), anchor, strong, words);
    }

    /** A place whose values are told by pointer, and by focus where their figures have room beside the place before. */
    public Plot tell(double place, double share, String words, List<Value> values) {
        double from = right(place - share / 2);
        double middle = right(place);
        List<Chart.Label> told = new ArrayList<>();
        for (Value value : values) {
            told.add(placed(right(place), down(value.y()) - LABEL_RISE, false, value.words()));
        }
        double room = LETTER
                * values.stream()
                        .mapToInt(value -> value.words().length())
                        .max()
                        .orElse(0);
        boolean roomy = middle - lastTold >= room;
        lastTold = roomy ? middle : lastTold;
        double width = Math.max(4, right(place + share / 2) - from);
        slots.add(new Chart.Slot(
                round(from),
                round(width),
                frame.top() - 8,
                frame.floor() - frame.top() + 8,
                round(middle),
                words,
                told,
                roomy));
        return this;
    }

    /** What a kind of mark is. */
    public Plot legend(Ink ink, String words) {
        legend.add(new Chart.Legend(ink, words));
        return this;
    }

    /** What the axis below says. */
    public Plot across(String words) {
        across = words;
        return this;
    }

    /** The picture. */
    public Chart chart(String title, String about) {
        List<Chart.Line> lines = y.ticks().stream()
                .map(tick -> new Chart.Line(round(down(tick.value())), tick.words()))
                .toList();
        List<Chart.Foot> feet = x.ticks().stream()
                .map(tick -> foot(right(tick.value()), tick.words()))
                .toList();
        return new Chart(title, about, frame, across, lines, feet, marks, labels, slots, legend);
    }

    private Chart.Foot foot(double at, String words) {
        String anchor = at + LETTER * words.length() / 2 > frame.width() ? "end" : "middle";
        return new Chart.Foot(round(Math.min(at, frame.width() - 1)), frame.floor() + FOOT, anchor, words);
    }

    private static double round(double value) {
        return Math.rint(value * 10) / 10;
    }

    /** Two figures to a number of places after the point, for tables. */
    public static String figure(double value, int places) {
        return String.format(Locale.ROOT, "%,." + places + "f", value).replace('-', '\u2212');
    }
}
