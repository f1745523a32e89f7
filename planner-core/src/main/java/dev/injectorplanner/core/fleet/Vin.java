package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Locale;

/**
 * Vehicle identification number: 17 characters, no I, O or Q (ISO 3779). Numbers of North America (first character 1
 * to 5) carry a check digit in position 9; others need not.
 *
 * <p>Source of the check digit: 49 CFR 565.15(c), tables III to V.
 *
 * @param text 17 capital letters and digits
 */
public record Vin(String text) {
    private static final int LENGTH = 17;
    private static final int CHECK_POSITION = 8;
    private static final String VALUES = "0123456789.ABCDEFGH..JKLMN.P.R..STUVWXYZ";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    public Vin {
        text = text.strip().toUpperCase(Locale.ROOT);
        if (text.length() != LENGTH) {
            throw refused(text, "has " + text.length() + " characters, a VIN has 17", "copy all 17 characters");
        }
        for (int i = 0; i < LENGTH; i++) {
            if (valueOf(text.charAt(i)) < 0) {
                throw refused(
                        text,
                        "has \"" + text.charAt(i) + "\" in position " + (i + 1)
                                + "; a VIN has letters and digits without I, O and Q",
                        "read the plate again: use 1 for I, and 0 for O or Q");
            }
        }
        if (isNorthAmerican(text) && text.charAt(CHECK_POSITION) != checkDigit(text)) {
            throw refused(
                    text,
                    "the check digit in position 9 is " + text.charAt(CHECK_POSITION)
                            + ", but the other characters require " + checkDigit(text),
                    "compare it with the plate: a character is wrong or two are swapped");
        }
    }

    /** What position 9 must hold: 0 to 9, or X for ten. */
    static char checkDigit(String text) {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * valueOf(text.charAt(i));
        }
        int remainder = sum % 11;
        return remainder == 10 ? 'X' : (char) ('0' + remainder);
    }

    /** Table III: digits stand for themselves, letters for the column they stand in; -1 for what may not stand in a VIN. */
    private static int valueOf(char c) {
        int at = c == '.' ? -1 : VALUES.indexOf(c);
        return at < 0 ? -1 : at % 10;
    }

    private static boolean isNorthAmerican(String text) {
        return "12345".indexOf(text.charAt(0)) >= 0;
    }

    private static InvalidValueException refused(String text, String reason, String fix) {
        return new InvalidValueException("vin", text, reason, fix);
    }

    @Override
    public String toString() {
        return text;
    }
}
