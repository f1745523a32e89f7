package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the cells of one column are written in one source, so that they can be brought into the form that {@link CellKind}
 * reads.
 *
 * @param numbers which sign stands before the decimals
 * @param numeric whether the column holds numbers
 * @param emptyWords words that mean an empty cell, in small letters
 * @param ignored signs and units that stand before or after a number and mean nothing, in small letters
 * @param values cells that mean another word, by the cell in small letters
 * @param century what two-digit years begin with, such as 20; 0: they are refused
 * @param dropsShortened whether a number that a spreadsheet shortened (6.04E+05) is left empty rather than refused
 * @param textOnly whether every cell is a text; in a workbook 12.5 may be a number that was never written down in a form
 * @param names the stored name that a cell means; what is not known comes back as it is
 */
public record CellForm(
        NumberForm numbers,
        boolean numeric,
        Set<String> emptyWords,
        List<String> ignored,
        Map<String, String> values,
        int century,
        boolean dropsShortened,
        boolean textOnly,
        UnaryOperator<String> names) {
    /** As templates are written. */
    public static final CellForm TEMPLATE = of(NumberForm.UNSTATED, false);

    private static final Pattern TWO_WAYS = Pattern.compile("([+-]?[1-9][0-9]{0,2})([.,])([0-9]{3})");
    private static final Pattern COMMA_ONLY = Pattern.compile(
            "[+-]?[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+|[+-]?[0-9]{1,3}(\\.[0-9]{3}){2,}|[+-]?[0-9]*,[0-9]{1,2}");
    private static final Pattern SHORT_POINT = Pattern.compile("[+-]?[0-9]*\\.[0-9]{1,2}");
    /** A number that a spreadsheet holds as such is written with a point whatever the texts beside it: it stays. */
    private static final Pattern POINT_ONLY =
            Pattern.compile("[+-]?[0-9]{1,3}(,[0-9]{3})+\\.[0-9]+|[+-]?[0-9]{1,3}(,[0-9]{3}){2,}");

    private static final Pattern SHORT_YEAR =
            Pattern.compile("([0-9]{1,2}[/.-][0-9]{1,2}[/.-])([0-9]{2})(?![0-9])(.*)");
    private static final Pattern SHORTENED = Pattern.compile("[0-9][.,]?[0-9]*[eE]\\+[0-9]{1,2}");

    /** Numbers of a said form, or, where nobody said, numbers of which some are in doubt. */
    public static CellForm numbers(NumberForm form) {
        return of(form, true);
    }

    private static CellForm of(NumberForm form, boolean numeric) {
        return new CellForm(form, numeric, Set.of(), List.of(), Map.of(), 0, false, false, UnaryOperator.identity());
    }

    /** The same, for cells that name something stored. */
    public CellForm named(UnaryOperator<String> lookup) {
        return new CellForm(numbers, numeric, emptyWords, ignored, values, century, dropsShortened, textOnly, lookup);
    }

    /** For a file whose cells are all texts. */
    public CellForm ofText() {
        return this == TEMPLATE
                ? this
                : new CellForm(numbers, numeric, emptyWords, ignored, values, century, dropsShortened, true, names);
    }

    /** Whether a number can be read two ways: {@code 490,254}, {@code 490.254}. */
    public static boolean readsTwoWays(String text) {
        return TWO_WAYS.matcher(text).matches();
    }

    /** Whether a spreadsheet has shortened a long number, so that its digits are lost. */
    public static boolean isShortened(String text) {
        return SHORTENED.matcher(text).matches();
    }

    /**
     * A cell in the form that kinds of cells read; empty where it means nothing.
     *
     * @param column the column's name, for a refusal
     * @param cell the cell, trimmed
     * @throws InvalidValueException if it is a number that a spreadsheet shortened
     */
    public String plain(String column, String cell) {
        if (cell.isEmpty() || this == TEMPLATE) {
            return cell;
        }
        String small = cell.toLowerCase(Locale.ROOT);
        if (emptyWords.contains(small)) {
            return "";
        }
        String word = values.get(small);
        if (word != null) {
            return word;
        }
        if (values.containsKey("0") && column.startsWith("cylinder")) {
            return CylinderCells.renumbered(cell, values);
        }
        if (numeric) {
            return number(column, stripped(cell));
        }
        if (isShortened(cell) && numbers != NumberForm.UNSTATED) {
            if (dropsShortened) {
                return "";
            }
            throw new InvalidValueException(
                    column,
                    cell,
                    "was shortened by a spreadsheet, its digits are lost",
                    "format the column as text and export again");
        }
        return names.apply(year(cell));
    }

    /** A file of one form that holds a number of the other is not what it was said to be. */
    private void refuseOtherForm(String column, String text) {
        Pattern other = numbers == NumberForm.POINT ? COMMA_ONLY : POINT_ONLY;
        boolean isOther = other.matcher(text).matches()
                || (textOnly
                        && numbers == NumberForm.COMMA
                        && SHORT_POINT.matcher(text).matches());
        if (numbers != NumberForm.UNSTATED && isOther) {
            throw new InvalidValueException(
                    column,
                    text,
                    "is not written as " + numbers.example(),
                    "write it in that form, or correct the form of numbers");
        }
    }

    private String year(String cell) {
        Matcher date = century == 0 ? null : SHORT_YEAR.matcher(cell);
        return date != null && date.matches() ? date.group(1) + century + date.group(2) + date.group(3) : cell;
    }

    /** Without signs and units at both ends. */
    private String stripped(String cell) {
        String text = cell;
        boolean again = true;
        while (again) {
            again = false;
            String small = text.toLowerCase(Locale.ROOT);
            for (String sign : ignored) {
                if (small.length() > sign.length() && small.endsWith(sign)) {
                    text = CellText.trimmed(text.substring(0, text.length() - sign.length()));
                    again = true;
                } else if (small.length() > sign.length() && small.startsWith(sign)) {
                    text = CellText.trimmed(text.substring(sign.length()));
                    again = true;
                }
                small = text.toLowerCase(Locale.ROOT);
            }
        }
        return text;
    }

    private String number(String column, String text) {
        Matcher number = TWO_WAYS.matcher(text);
        if (!number.matches()) {
            refuseOtherForm(column, text);
            return text;
        }
        if (numbers == NumberForm.UNSTATED) {
            throw NumberCells.readsTwoWays(column, text);
        }
        boolean decimal = number.group(2).equals(".") == (numbers == NumberForm.POINT);
        return number.group(1) + (decimal ? "." : "") + number.group(3);
    }
}
