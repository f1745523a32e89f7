package dev.injectorplanner.core.fleet;

import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;

/**
 * Regular expression that calibration codes match. It comes from data, so it runs on an engine whose time grows with the
 * code's length alone, whatever the expression: no backtracking, hence no look-around and no back-references.
 */
public final class CodePattern {
    /** Longest expression in characters; codes are named by far shorter ones. */
    static final int MOST_CHARACTERS = 200;

    /** Largest expression once its counted repeats are written out, in characters. */
    static final int MOST_STEPS = 5_000;

    private CodePattern() {}

    /**
     * Checks an expression.
     *
     * @return the expression without blanks around it
     * @throws InvalidValueException where it cannot be read, needs backtracking, or is too large
     */
    public static String checked(String pattern) {
        String bare = Require.text("code_pattern", pattern.strip());
        if (bare.length() > MOST_CHARACTERS) {
            throw refused(
                    bare.substring(0, 40) + "...",
                    "has " + bare.length() + " characters, the maximum is " + MOST_CHARACTERS);
        }
        if (PatternSize.hasClassInClass(bare)) {
            throw refused(bare, "has a class of characters within a class");
        }
        try {
            Pattern.compile(bare.replaceAll("\\{[0-9,]*}", "{1}")); // its form first: counts cost memory
            if (PatternSize.of(bare) > MOST_STEPS) {
                throw refused(bare, "repeats too much, the maximum is " + MOST_STEPS + " characters written out");
            }
            Pattern.compile(bare);
        } catch (PatternSyntaxException e) {
            throw refused(
                    bare,
                    "is not a regular expression that can be used here (" + e.getDescription()
                            + (e.getPattern() == null ? "" : ": " + e.getPattern()) + ")");
        }
        return bare;
    }

    private static InvalidValueException refused(String pattern, String why) {
        return new InvalidValueException(
                "code_pattern", pattern, why, "write it as [0-9A-Z]{16}, without look-ahead or back-references");
    }

    /**
     * Whether a code matches the whole expression.
     *
     * @param pattern one that was checked
     * @param code any text
     */
    static boolean matches(String pattern, String code) {
        return Pattern.matches(pattern, code);
    }
}
