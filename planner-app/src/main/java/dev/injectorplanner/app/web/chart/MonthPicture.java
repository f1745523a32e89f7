package dev.injectorplanner.app.web.chart;

import dev.injectorplanner.app.web.chart.Chart.Frame;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Bars by month from 0, with what is held against them or their band; the first, the last and the highest figure are written. */
public final class MonthPicture {
    private static final int STEPS = 4;
    private static final int FEW_MONTHS = 13;
    private static final int QUARTER = 3;
    private static final double WIDE = 0.7;
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);

    private final String title;
    private final String unit;
    private final List<Month> months;
    private final DoubleFunction<String> words;
    private final String against;
    private @Nullable YearMonth since;

    /**
     * A month.
     *
     * @param value its figure, NaN where none is known
     * @param against what is held against it, or null
     * @param low lower end of its band, or null
     * @param high upper end of its band, or null
     * @param expected whether it is expected and not yet booked
     */
    public record Month(
            YearMonth month,
            double value,
            @Nullable Double against,
            @Nullable Double low,
            @Nullable Double high,
            boolean expected) {
        /** A figure with something held against it. */
        public static Month of(YearMonth month, double value, @Nullable Double against) {
            return new Month(month, value, against, null, null, false);
        }

        /** A figure with its band. */
        public static Month band(YearMonth month, double value, double low, double high, boolean expected) {
            return new Month(month, value, null, low, high, expected);
        }

        /** The same with something held against it. */
        public Month held(double other) {
            return new Month(month, value, other, low, high, expected);
        }

        private double highest() {
            return DoubleStream.of(value, orNone(against), orNone(high))
                    .filter(Double::isFinite)
                    .max()
                    .orElse(0);
        }

        private static double orNone(@Nullable Double value) {
            return value == null ? Double.NaN : value;
        }
    }

    /**
     * A picture with its heading.
     *
     * @param total of all months in words, or empty
     * @param range of the total in words, or empty
     */
    public record Panel(String title, String unit, String total, String range, Chart chart) {}

    /**
     * @param against what is held against each month, in words, or empty
     * @param words a figure in words
     */
    public MonthPicture(String title, String unit, String against, List<Month> months, DoubleFunction<String> words) {
        this.title = title;
        this.unit = unit;
        this.against = against;
        this.months = List.copyOf(months);
        this.words = words;
    }

    /** Marks the month from which on something is different; null for none. */
    public MonthPicture since(@Nullable YearMonth month) {
        since = month;
        return this;
    }

    /** Without a total. */
    public Panel panel() {
        return panel("", "");
    }

    /** With a total and its range. */
    public Panel panel(String total, String range) {
        return new Panel(title, unit, total, range, chart());
    }

    private Chart chart() {
        double highest = months.stream().mapToDouble(Month::highest).max().orElse(0);
        Axis y = Axis.even(0, Math.max(highest, 0), STEPS, false, words);
        Plot plot = new Plot(
                Frame.PANEL,
                Axis.places(months.stream().map(this::letter).toList()),
                highest > 0 ? y : Axis.even(0, 1, 1, true, words));
        for (int place = 0; place < months.size(); place++) {
            draw(plot, place);
        }
        written().forEach(place -> plot.label(place, top(place), false, told(place)));
        YearMonth from = since;
        if (from != null) {
            plot.upright(Ink.LIMIT, months.stream().map(Month::month).toList().indexOf(from) - 0.5, y.from(), y.to());
        }
        if (!months.isEmpty()) {
            plot.across(NAME.format(months.get(0).month()) + " to "
                    + NAME.format(months.get(months.size() - 1).month()));
        }
        return plot.chart(title + " by month, " + unit, about());
    }

    private void draw(Plot plot, int place) {
        Month month = months.get(place);
        if (Double.isFinite(month.value())) {
            plot.bar(month.expected() ? Ink.OUTLINE : Ink.BAR, place, WIDE, month.value());
        }
        if (month.low() != null && month.high() != null) {
            plot.upright(Ink.RANGE, place, month.low(), month.high());
        }
        if (month.against() != null) {
            plot.notch(Ink.AGAINST, place, 0.95, month.against());
        }
        plot.tell(place, 1, tip(month), List.of(new Plot.Value(top(place), told(place))));
    }

    private double top(int place) {
        Month month = months.get(place);
        Double high = month.high();
        double value = Double.isFinite(month.value()) ? month.value() : 0;
        return high == null ? value : Math.max(high, value);
    }

    private String told(int place) {
        double value = months.get(place).value();
        return Double.isFinite(value) ? words.apply(value) : "";
    }

    /** Months whose figure always stands at the bar: the first, the last and the highest, where they are apart. */
    private List<Integer> written() {
        int last = months.size() - 1;
        int highest = 0;
        for (int place = 1; place <= last; place++) {
            highest = months.get(place).value() > months.get(highest).value() ? place : highest;
        }
        List<Integer> written = new ArrayList<>();
        for (int place : new int[] {highest, 0, last}) {
            if (place >= 0 && written.stream().noneMatch(each -> Math.abs(each - place) < apart())) {
                written.add(place);
            }
        }
        return written;
    }

    private int apart() {
        return Math.max(2, months.size() / 5);
    }

    private String tip(Month month) {
        String name = NAME.format(month.month());
        if (!Double.isFinite(month.value())) {
            return name + ": not known";
        }
        Double held = month.against();
        Optional<String> range = Optional.ofNullable(month.low())
                .map(low -> " (" + words.apply(low) + " to " + words.apply(Objects.requireNonNull(month.high())) + ")");
        return name + ": " + words.apply(month.value()) + range.orElse("")
                + (held == null ? "" : ", " + against + " " + words.apply(held));
    }

    private String about() {
        return months.stream()
                        .map(this::tip)
                        .reduce((one, other) -> one + "; " + other)
                        .orElse("No month")
                + ".";
    }

    private String letter(Month each) {
        YearMonth month = each.month();
        boolean shown = months.size() <= FEW_MONTHS || months.indexOf(each) % QUARTER == 0;
        return shown ? month.getMonth().getDisplayName(TextStyle.NARROW, Locale.UK) : "";
    }
}
