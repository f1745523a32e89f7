package dev.injectorplanner.app.web.chart;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Round figures to divide an axis by. */
public final class Ticks {
    private static final double[] ROUND = {1, 2, 2.5, 5, 10};
    private static final double HAIR = 1e-9;
    private static final int[] MONTHS = {1, 2, 3, 6, 12, 24, 60, 120};

    private Ticks() {}

    /**
     * The smallest round step, 1, 2, 2.5 or 5 times a power of ten, of which {@code most} reach a span.
     *
     * @param span what is divided; 1 where it is not above 0
     * @param most steps at most
     * @param whole whether figures are counted, so that no step is below 1 or broken
     */
    public static double step(double span, int most, boolean whole) {
        double least = (span > 0 && Double.isFinite(span) ? span : 1) / most;
        double ten = Math.pow(10, Math.floor(Math.log10(least) + HAIR));
        double step = 10 * ten;
        for (double times : ROUND) {
            if (times * ten >= least * (1 - HAIR) && (!whole || times * ten == Math.rint(times * ten))) {
                step = times * ten;
                break;
            }
        }
        return whole ? Math.max(1, step) : step;
    }

    /** Multiples of a step from one value to another, both of them multiples. */
    public static List<Double> between(double from, double to, double step) {
        List<Double> ticks = new ArrayList<>();
        long first = Math.round(from / step);
        long last = Math.round(to / step);
        for (long each = first; each <= last; each++) {
            ticks.add(each * step);
        }
        return ticks;
    }

    /** First days of months, quarters or years within a time, {@code most} of them at most. */
    public static List<LocalDate> months(LocalDate from, LocalDate to, int most) {
        long span = 12L * (to.getYear() - from.getYear()) + to.getMonthValue() - from.getMonthValue();
        int step = MONTHS[MONTHS.length - 1];
        for (int each : MONTHS) {
            if (span / each + 1 <= most) {
                step = each;
                break;
            }
        }
        List<LocalDate> days = new ArrayList<>();
        YearMonth month = YearMonth.from(from);
        if (from.getDayOfMonth() > 1) {
            month = month.plusMonths(1);
        }
        while ((12L * month.getYear() + month.getMonthValue() - 1) % step != 0) {
            month = month.plusMonths(1);
        }
        for (; !month.atDay(1).isAfter(to); month = month.plusMonths(step)) {
            days.add(month.atDay(1));
        }
        return days;
    }
}
