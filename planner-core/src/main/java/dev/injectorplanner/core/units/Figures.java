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
        return String.format(Locale.ROOT, "%,d", Math.round(value));
    }

    /** One decimal, left out where it is zero: 6.5, 12. */
    public static String tenths(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded) ? whole(rounded) : String.format(Locale.ROOT, "%,.1f", rounded);
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
        return String.format(Locale.ROOT, "%,d ", count) + (count == 1 ? one : many);
    }
}
