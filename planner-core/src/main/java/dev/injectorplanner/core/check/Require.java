package dev.injectorplanner.core.check;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Guards for the constructors of records. Each asks for what is right, so that NaN is refused too. */
public final class Require {
    /** Longest name of a thing (truck, depot, part): longer ones are a shifted column more often than a name. */
    public static final int LONGEST_NAME = 60;

    private static final int LONGEST_TEXT = 2_000;

    private Require() {}

    /** A name that identifies something: 1 to 60 characters, no line breaks or control characters. */
    public static String name(String field, @Nullable String value) {
        String name = value == null ? "" : value.strip();
        if (name.isEmpty()) {
            throw new InvalidValueException(field, "", "is empty", "give it a name");
        }
        if (name.length() > LONGEST_NAME) {
            throw new InvalidValueException(
                    field,
                    name.substring(0, 20) + "...",
                    "has " + name.length() + " characters, the maximum is " + LONGEST_NAME,
                    "shorten it, or check whether the columns have shifted");
        }
        return withoutControls(field, name);
    }

    /** A name that may be missing: null for blank. */
    public static @Nullable String optionalName(String field, @Nullable String value) {
        return value == null || value.isBlank() ? null : name(field, value);
    }

    /** Free text, possibly empty, at most 2,000 characters. */
    public static String text(String field, @Nullable String value) {
        String text = value == null ? "" : value.strip();
        if (text.length() > LONGEST_TEXT) {
            throw new InvalidValueException(
                    field,
                    text.substring(0, 20) + "...",
                    "has " + text.length() + " characters, the maximum is " + LONGEST_TEXT,
                    "shorten it");
        }
        return withoutControls(field, text);
    }

    private static String withoutControls(String field, String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isISOControl(text.charAt(i))) {
                throw new InvalidValueException(
                        field,
                        text.replaceAll("\\p{Cntrl}", "?"),
                        "holds a line break or control character",
                        "write it on one line");
            }
        }
        return text;
    }

    /** Finite and above zero. */
    public static double positive(String field, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new InvalidValueException(field, plain(value), "must be above zero", "enter a number above zero");
        }
        return value;
    }

    /** Finite and zero or more. */
    public static double notNegative(String field, double value) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new InvalidValueException(field, plain(value), "must be zero or more", "enter zero or more");
        }
        return value;
    }

    /** Zero or more where given. */
    public static @Nullable Double optionalNotNegative(String field, @Nullable Double value) {
        return value == null ? null : Double.valueOf(notNegative(field, value));
    }

    /** Above zero where given. */
    public static @Nullable Double optionalPositive(String field, @Nullable Double value) {
        return value == null ? null : Double.valueOf(positive(field, value));
    }

    /** Within {@code least..most}, both included. */
    public static double within(String field, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new InvalidValueException(
                    field,
                    plain(value),
                    "must be from " + plain(least) + " to " + plain(most),
                    "enter a number from " + plain(least) + " to " + plain(most));
        }
        return value;
    }

    /** Within {@code least..most}, both included. */
    public static int within(String field, int value, int least, int most) {
        if (value < least || value > most) {
            throw new InvalidValueException(
                    field,
                    value,
                    "must be from " + least + " to " + most,
                    "enter a whole number from " + least + " to " + most);
        }
        return value;
    }

    /** An amount of money, zero or more, in the site's one currency, kept without trailing zeros below cents. */
    public static BigDecimal money(String field, BigDecimal value) {
        if (value.signum() < 0) {
            throw new InvalidValueException(
                    field, value.toPlainString(), "must be zero or more", "enter an amount of zero or more");
        }
        BigDecimal plain = value.stripTrailingZeros();
        if (plain.precision() - plain.scale() > 13) {
            throw new InvalidValueException(
                    field, plain, "is too large to be a real amount", "enter it in whole units");
        }
        if (plain.scale() > 4) {
            throw new InvalidValueException(
                    field, value.toPlainString(), "has more than four decimals", "round it to cents");
        }
        return plain.setScale(Math.max(plain.scale(), 2));
    }

    /** A number without needless decimals: 5 rather than 5.0. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
