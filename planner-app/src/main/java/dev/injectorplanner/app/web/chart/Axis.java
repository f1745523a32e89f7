package dev.injectorplanner.app.web.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/** One axis of a picture: where a value lies, from 0 to 1, and the figures written at it. */
public final class Axis {
    private final double from;
    private final double to;
    private final DoubleUnaryOperator scale;
    private final List<Tick> ticks;

    /** A figure at an axis. */
    public record Tick(double value, String words) {}

    private Axis(double from, double to, DoubleUnaryOperator scale, List<Tick> ticks) {
        this.from = from;
        this.to = to;
        this.scale = scale;
        this.ticks = List.copyOf(ticks);
    }

    /**
     * Even, from a round figure at or below one value to a round figure at or above another.
     *
     * @param steps steps at most
     * @param whole whether figures are counted
     */
    public static Axis even(double least, double most, int steps, boolean whole, DoubleFunction<String> words) {
        double step = Ticks.step(most - least, steps, whole);
        double from = Math.floor(least / step + 1e-9) * step;
        double to = Math.max(from + step, Math.ceil(most / step - 1e-9) * step);
        return new Axis(
                from,
                to,
                value -> value,
                Ticks.between(from, to, step).stream()
                        .map(value -> new Tick(value, words.apply(value)))
                        .toList());
    }

    /** Chances from 0 to 1 by their square roots, which spread small ones. */
    public static Axis chances() {
        List<Tick> ticks = new ArrayList<>();
        for (int percent : new int[] {0, 1, 5, 10, 25, 50, 100}) {
            ticks.add(new Tick(percent / 100.0, percent + "\u00a0%"));
        }
        return new Axis(0, 1, Math::sqrt, ticks);
    }

    /** Days by their number, from one to another, with first days of months, {@code most} of them at most; 0 for none. */
    public static Axis days(LocalDate from, LocalDate to, int most, Function<LocalDate, String> words) {
        LocalDate end = to.isAfter(from) ? to : from.plusDays(1);
        return new Axis(
                from.toEpochDay(),
                end.toEpochDay(),
                value -> value,
                most == 0
                        ? List.of()
                        : Ticks.months(from, end, most).stream()
                                .map(day -> new Tick(day.toEpochDay(), words.apply(day)))
                                .toList());
    }

    /** Places side by side, 0 to the last, each with its word below; an empty word is left out. */
    public static Axis places(List<String> words) {
        List<Tick> ticks = new ArrayList<>();
        for (int place = 0; place < words.size(); place++) {
            if (!words.get(place).isEmpty()) {
                ticks.add(new Tick(place, words.get(place)));
            }
        }
        return new Axis(-0.5, Math.max(1, words.size()) - 0.5, value -> value, ticks);
    }

    public double from() {
        return from;
    }

    public double to() {
        return to;
    }

    List<Tick> ticks() {
        return ticks;
    }

    /** Where a value lies: 0 at the axis's beginning, 1 at its end; values beyond lie at the ends. */
    double at(double value) {
        double least = scale.applyAsDouble(from);
        double share =
                (scale.applyAsDouble(Math.max(from, Math.min(to, value))) - least) / (scale.applyAsDouble(to) - least);
        return Math.max(0, Math.min(1, share));
    }
}
