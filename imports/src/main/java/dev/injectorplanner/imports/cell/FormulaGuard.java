package dev.injectorplanner.imports.cell;

import java.util.regex.Pattern;

/**
 * Text that a spreadsheet program would take for a formula: in text files that we write it is led in by an apostrophe, which
 * is taken off again where it is read. Numbers stay as they are. Source of the characters: OWASP, CSV Injection, from memory.
 */
public final class FormulaGuard {
    private static final Pattern FORMULA = Pattern.compile("'*[=+\\-@\\t\\r].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9][0-9., \\u00a0]*%?");

    private FormulaGuard() {}

    public static String guarded(String text) {
        return isFormula(text) ? "'" + text : text;
    }

    /** What {@link #guarded} made of a text, as it was; every other text as it is. */
    public static String unguarded(String text) {
        return text.startsWith("'") && isFormula(text.substring(1)) ? text.substring(1) : text;
    }

    private static boolean isFormula(String text) {
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
    }
}
