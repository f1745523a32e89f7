package dev.injectorplanner.core.units;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Figures in words: thousands parted by commas, no needless decimals, always with their unit. */
public final class Figures {
    private Figures() {}

    /** To four decimals: sums of decimals lose the trace of their adding, 3.4000000000000004 becomes 3.4. */
    public static double tidy(double sum) {
        return Math.rint(sum * 10_000) / 10_000;
    }

    /** 412300.4 as {@code 412,300}. */
    public static String whole(double value) {
        return grouped(Math.round(value));
    }

    /** By hand: pages write thousands of figures, and a format string takes ten times as long. */
    private static String grouped(long value) {
        StringBuilder text = new StringBuilder(Long.toString(value));
        int first = value < 0 ? 1 : 0;
        for (int at = text.length() - 3; at > first; at -= 3) {
            text.insert(at, ',');
        }
        return text.toString();
    }

    /** One decimal, left out where it is zero: 6.5, 12. */
    public static String tenths(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded) ? whole(rounded) : oneDecimal(value);
    }

    /** Always one decimal, for columns: 6.0, 1,204.5. */
    public static String oneDecimal(double value) {
        if (!(Math.abs(value) < 1e15)) {
            return String.format(Locale.ROOT, "%,.1f", value);
        }
        long tenths = Math.round(Math.rint(value * 10));
        return (tenths < 0 ? "-" : "") + grouped(Math.abs(tenths / 10)) + "." + Math.abs(tenths % 10);
    }

    /** A figure as somebody gave it, to four decimals: 0.25, 19,955.8656. */
    public static String given(double value) {
        return new DecimalFormat("#,##0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

    /** A share as somebody gave it, in percent: 99.99 %. */
    public static String givenPercent(double share) {
        return given(100 * share) + " %";
    }

    /** A chance in whole percent: under 1 %, 7 %, over 99 %. */
    public static String percent(double chance) {
        if (chance < 0.01) {
            return "under 1 %";
        }
        return chance > 0.99 ? "over 99 %" : whole(100 * chance) + " %";
    }

    /** Km with thousands apart. */
    public static String km(double km) {
        return whole(km) + " km";
    }

    public static String hours(double hours) {
        return tenths(hours) + " h";
    }

    public static String litres(double litres) {
        return tenths(litres) + " l";
    }

    /** {@code 1 fault}, {@code 3 faults}. */
    public static String count(long count, String one, String many) {
        return grouped(count) + " " + (count == 1 ? one : many);
    }
}
