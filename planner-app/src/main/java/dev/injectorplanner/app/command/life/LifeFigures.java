package dev.injectorplanner.app.command.life;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures as people read them. */
final class LifeFigures {
    private static final MathContext FIVE = new MathContext(5, RoundingMode.HALF_EVEN);

    private LifeFigures() {}

    /** Five significant digits; whole numbers of more digits in full. */
    static String five(double value) {
        if (Double.isNaN(value)) {
            return "-";
        }
        if (Double.isInfinite(value)) {
            return "no limit";
        }
        double size = Math.abs(value);
        if (size >= 10_000 && size < 1e15) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        BigDecimal rounded = new BigDecimal(value).round(FIVE);
        return size != 0 && (size < 1e-4 || size >= 1e15)
                ? String.format(Locale.ROOT, "%.4e", value)
                : rounded.toPlainString();
    }

    static String range(double low, double high) {
        return five(low) + " to " + five(high);
    }
}
