package dev.injectorplanner.imports.propose;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.CellContext;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.table.Column;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What a cell may be, whatever its number form and date order. */
final class CellTests {
    /** Words that offices write where they know nothing; common practice in English. */
    static final Set<String> EMPTY_WORDS = Set.of(
            "-",
            "--",
            "---",
            "\u2013",
            "\u2014",
            ".",
            "n/a",
            "na",
            "n.a.",
            "#n/a",
            "unknown",
            "none",
            "nil",
            "null",
            "tbc",
            "tbd",
            "not known",
            "n/k",
            "not recorded",
            "no reading",
            "not available",
            "blank",
            "x");

    /** Signs and units that stand around numbers. */
    static final List<String> SIGNS = List.of(
            "$",
            "\u20ac",
            "\u00a3",
            "usd",
            "eur",
            "gbp",
            "us$",
            "km",
            "kms",
            "mi",
            "miles",
            "mile",
            "hrs",
            "hr",
            "h",
            "hours",
            "l",
            "gal",
            "ml",
            "mm3",
            "rpm",
            "cyl",
            "cylinder",
            "cyl.",
            "#",
            "no.",
            "pcs",
            "ea",
            "x",
            "days",
            "d",
            "approx",
            "ca.",
            "~");

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9][0-9.,'\u2019\u00a0 ]*");
    private static final Pattern SHORT_YEAR = Pattern.compile("[0-9]{1,2}([/.-])[0-9]{1,2}\\1[0-9]{2}(?![0-9]).*");
    private static final Pattern TIME = Pattern.compile("[0-9]{1,2}:[0-9]{2}(:[0-9]{2})?\\s*([AaPp][Mm])?");

    private CellTests() {}

    static boolean isEmptyWord(String cell) {
        return EMPTY_WORDS.contains(cell.toLowerCase(Locale.ROOT));
    }

    static boolean hasShortYear(String cell) {
        return SHORT_YEAR.matcher(cell).matches();
    }

    static boolean isTime(String cell) {
        return TIME.matcher(cell).matches();
    }

    static boolean isNumber(String cell) {
        return NUMBER.matcher(bare(cell)).matches();
    }

    /** The number without the signs around it. */
    static String bare(String cell) {
        String text = cell.toLowerCase(Locale.ROOT).strip();
        boolean again = true;
        while (again) {
            again = false;
            for (String sign : SIGNS) {
                if (text.length() > sign.length() && text.endsWith(sign)) {
                    text = text.substring(0, text.length() - sign.length()).strip();
                    again = true;
                } else if (text.length() > sign.length() && text.startsWith(sign)) {
                    text = text.substring(sign.length()).strip();
                    again = true;
                }
            }
        }
        return text;
    }

    /** Whether a cell can be of a column's kind once its form is known. */
    static boolean fits(Column<?> column, String cell) {
        if (isEmptyWord(cell) || column.kind() == (Object) CellKinds.TEXT) {
            return true;
        }
        if (column.kind().holdsNumbers()) {
            if (column.units().equals(ColumnUnit.DISTANCE) && TradeWords.saysHours(cell)) {
                return false;
            }
            return isNumber(cell);
        }
        if (column.kind().holdsDates() && hasShortYear(cell)) {
            return true;
        }
        return reads(column, cell, DateOrder.DAY_FIRST)
                || (column.kind().holdsDates() && reads(column, cell, DateOrder.MONTH_FIRST))
                || !TradeWords.valueWord(column, cell).isEmpty();
    }

    static boolean reads(Column<?> column, String cell, DateOrder dates) {
        try {
            column.kind().read(cell, new CellContext(column.name(), dates, "T", truck -> ZoneOffset.UTC));
            return true;
        } catch (InvalidValueException e) {
            return false;
        }
    }
}
