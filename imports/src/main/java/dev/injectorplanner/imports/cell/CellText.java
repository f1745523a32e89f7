package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Texts of cells that mean something else than they say. */
public final class CellText {
    /** Stands for a formula whose result the workbook does not hold. */
    public static final String NO_RESULT = "#NO RESULT!";

    private static final int LONGEST = 4_000;
    private static final Set<String> SPREADSHEET_ERRORS = Set.of(
            "#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NAME?", "#NUM!", "#NULL!", "#SPILL!", "#CALC!", "#GETTING_DATA");
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private CellText() {}

    /** The cell's text without spaces (plain, no-break) and byte order marks at its ends. */
    public static String trimmed(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || c == '\u00A0' || c == '\u202F' || c == '\uFEFF' || c == '\u200B';
    }

    /** @throws InvalidValueException if the text is a spreadsheet's error, a formula without result, or far too long */
    public static void refuseErrors(String column, String text) {
        if (text.length() > LONGEST) {
            throw new InvalidValueException(
                    column,
                    text.substring(0, 20) + "...",
                    "has " + text.length() + " characters, more than a cell may have",
                    "shorten it, or check whether a quotation mark is missing");
        }
        if (text.equals(NO_RESULT)) {
            throw new InvalidValueException(
                    column,
                    "",
                    "holds a formula whose result was not saved",
                    "open the workbook in a spreadsheet program and save it, or enter the value");
        }
        if (text.startsWith("#") && SPREADSHEET_ERRORS.contains(text)) {
            throw new InvalidValueException(
                    column, text, "holds the spreadsheet error " + text, "correct the formula, or enter the value");
        }
    }

    /** Workbooks write characters that XML cannot hold as {@code _x000D_}. */
    public static String unescaped(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher matcher = ESCAPED.matcher(text);
        return matcher.replaceAll(
                found -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }

    public static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
