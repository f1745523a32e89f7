package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Numbers as people and programs write them. What can be read two ways is refused. */
public final class NumberCells {
    private static final int LONGEST = 60;
    private static final String SPACES = " \u00A0\u2009\u202F'\u2019";
    private static final Pattern GROUPED_BY_SPACES =
            Pattern.compile("[+-]?[0-9]{1,3}([" + SPACES + "][0-9]{3})+([.,][0-9]+)?");
    private static final Pattern PLAIN = Pattern.compile("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]{1,3})?");
    private static final Pattern READS_TWO_WAYS = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern GROUPED_BY_COMMAS =
            Pattern.compile("[+-]?[1-9][0-9]{0,2}(,[0-9]{3}){2,}(\\.[0-9]+)?|[+-]?[1-9][0-9]{0,2},[0-9]{3}\\.[0-9]+");
    private static final Pattern GROUPED_BY_DOTS =
            Pattern.compile("[+-]?[1-9][0-9]{0,2}(\\.[0-9]{3}){2,}(,[0-9]+)?|[+-]?[1-9][0-9]{0,2}\\.[0-9]{3},[0-9]+");
    private static final Pattern COMMA_DECIMAL = Pattern.compile("[+-]?[0-9]*,[0-9]+");

    private NumberCells() {}

    /** A finite number. */
    public static double number(String column, String text) {
        double value = decimal(column, text).doubleValue() + 0.0; // no negative zero
        if (!Double.isFinite(value)) {
            throw new InvalidValueException(column, text, "is too large", "correct it");
        }
        return value;
    }

    /** A percentage, with or without its sign: 50 and 50% are both 50. */
    public static double percent(String column, String text) {
        return number(column, text.endsWith("%") ? withoutSign(text) : text);
    }

    /** A chance: 0.8 and 80% are both 0.8. */
    public static double chance(String column, String text) {
        return text.endsWith("%")
                ? decimal(column, withoutSign(text)).movePointLeft(2).doubleValue()
                : number(column, text);
    }

    private static String withoutSign(String text) {
        return text.substring(0, text.length() - 1).strip();
    }

    /** A whole number within the range of int. */
    public static int whole(String column, String text) {
        double value = number(column, text);
        if (value != Math.rint(value)) {
            throw new InvalidValueException(column, text, "is not a whole number", "write a whole number");
        }
        if (Math.abs(value) > Integer.MAX_VALUE) {
            throw new InvalidValueException(column, text, "is too large", "correct it");
        }
        return (int) value;
    }

    /** A number with all its digits. */
    public static BigDecimal decimal(String column, String text) {
        String number = text.replace('\u2212', '-');
        if (GROUPED_BY_SPACES.matcher(number).matches()) {
            number = number.replaceAll("[" + SPACES + "]", "").replace(',', '.');
        } else if (READS_TWO_WAYS.matcher(number).matches()) {
            throw readsTwoWays(column, text);
        } else if (GROUPED_BY_COMMAS.matcher(number).matches()) {
            number = number.replace(",", "");
        } else if (GROUPED_BY_DOTS.matcher(number).matches()) {
            number = number.replace(".", "").replace(',', '.');
        } else if (COMMA_DECIMAL.matcher(number).matches()) {
            number = number.replace(',', '.');
        }
        if (number.length() > LONGEST || !PLAIN.matcher(number).matches()) {
            throw new InvalidValueException(
                    column, text, "is not a number", "write digits with a dot for decimals and nothing else");
        }
        return new BigDecimal(number);
    }

    /** Refuses a number with one sign that may stand before decimals or thousands. */
    static InvalidValueException readsTwoWays(String column, String text) {
        String number = text.replace(',', '.');
        return new InvalidValueException(
                column,
                text,
                "can be read in two ways, " + number.replace(".", "") + " or " + number,
                "write it without a thousands separator and with a dot for decimals");
    }
}
