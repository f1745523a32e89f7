package dev.injectorplanner.core.change;

import dev.injectorplanner.core.history.Clock;
import dev.injectorplanner.core.history.Span;
import dev.injectorplanner.core.history.UnitLife;
import dev.injectorplanner.core.life.PredictiveLife;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lives of one part and origin, seen on one clock, from which groups by day of fitting are taken. */
final class Cohorts {
    private static final int DAYS_A_WEEK = 7;

    private final List<UnitLife> units;
    private final Clock clock;
    private final LocalDate today;

    private Cohorts(List<UnitLife> units, Clock clock, LocalDate today) {
        this.units = units;
        this.clock = clock;
        this.today = today;
    }

    static Cohorts of(List<UnitLife> units, Clock clock, LocalDate today) {
        return new Cohorts(units.stream().filter(unit -> unit.on(clock) != null).toList(), clock, today);
    }

    /**
     * What happened to a group by weeks from the day the first of it was fitted.
     *
     * @param failures failures, and worn ones found, in each week
     * @param expected failures expected in each week
     */
    record Course(double[] failures, double[] expected) {
        int weeks() {
            return failures.length;
        }

        double sum() {
            return Arrays.stream(expected).sum();
        }
    }

    Clock clock() {
        return clock;
    }

    int size() {
        return units.size();
    }

    int failures() {
        return (int) units.stream().filter(UnitLife::failedOrWould).count();
    }

    boolean hasFittedBefore(LocalDate day) {
        return units.stream().anyMatch(unit -> unit.fittedOn().isBefore(day));
    }

    /** Units fitted from a day on, and before another where there is one. */
    Cohorts fitted(LocalDate from, @Nullable LocalDate before) {
        return new Cohorts(
                units.stream()
                        .filter(unit -> !unit.fittedOn().isBefore(from)
                                && (before == null || unit.fittedOn().isBefore(before)))
                        .toList(),
                clock,
                today);
    }

    /** Failures that a life would have had in what was seen of these units. */
    double expected(PredictiveLife life) {
        double sum = 0;
        for (UnitLife unit : units) {
            Span span = unit.on(clock);
            sum += span == null
                    ? 0
                    : EarlierLife.cumulative(life, span.exit()) - EarlierLife.cumulative(life, span.entry());
        }
        return sum;
    }

    /** Weeks from a day to today; use is spread evenly over the days that a unit was seen. */
    Course course(EarlierLife life, LocalDate from) {
        int weeks = (int) Math.max(1, ChronoUnit.DAYS.between(from, today) / DAYS_A_WEEK + 1);
        double[] failures = new double[weeks];
        double[] expected = new double[weeks];
        for (UnitLife unit : units) {
            Span span = unit.on(clock);
            if (span != null) {
                spread(unit, span, life, from, expected);
                if (unit.failedOrWould()) {
                    failures[Math.min(weeks - 1, weekOf(from, unit.exitOn()))]++;
                }
            }
        }
        return new Course(failures, expected);
    }

    private static void spread(UnitLife unit, Span span, EarlierLife life, LocalDate from, double[] expected) {
        LocalDate begins = unit.observedFrom();
        double days = Math.max(1, ChronoUnit.DAYS.between(begins, unit.exitOn()));
        double perDay = (span.exit() - span.entry()) / days;
        double before = span.entry();
        LocalDate day = begins;
        while (day.isBefore(unit.exitOn())) {
            int week = Math.min(expected.length - 1, weekOf(from, day));
            LocalDate end = from.plusDays(DAYS_A_WEEK * (week + 1L));
            LocalDate until = end.isAfter(day) && end.isBefore(unit.exitOn()) ? end : unit.exitOn();
            double now = span.entry() + perDay * ChronoUnit.DAYS.between(begins, until);
            expected[week] += life.expected(before, now);
            before = now;
            day = until;
        }
    }

    private static int weekOf(LocalDate from, LocalDate day) {
        return (int) Math.max(0, ChronoUnit.DAYS.between(from, day) / DAYS_A_WEEK);
    }
}
