package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days as people and programs write them. What can be read two ways is refused. */
public final class DateCells {
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2150;
    private static final Pattern YEAR_FIRST = Pattern.compile("([0-9]{4})([-/.])([0-9]{1,2})\\2([0-9]{1,2})");
    private static final Pattern COMPACT = Pattern.compile("((?:19|20)[0-9]{2})([0-9]{2})([0-9]{2})");
    private static final Pattern YEAR_LAST = Pattern.compile("([0-9]{1,2})([-/.])([0-9]{1,2})\\2([0-9]{4})");
    private static final Pattern SHORT_YEAR = Pattern.compile("[0-9]{1,2}[-/. ][0-9A-Za-z]{1,9}[-/. ][0-9]{2}");
    private static final Pattern DAY_NAMED_MONTH =
            Pattern.compile("([0-9]{1,2})(?:st|nd|rd|th)?[-/. ]+([A-Za-z]{3,9})\\.?,?[-/. ]+([0-9]{4})");
    private static final Pattern NAMED_MONTH_DAY =
            Pattern.compile("([A-Za-z]{3,9})\\.?[-/. ]+([0-9]{1,2})(?:st|nd|rd|th)?,?[-/. ]+([0-9]{4})");
    private static final Pattern MIDNIGHT = Pattern.compile("(.*[0-9])[T ]+0{1,2}:00(?::00(?:\\.0+)?)?");
    private static final Pattern SERIAL = Pattern.compile("[0-9]{5}(?:\\.[0-9]+)?");

    private DateCells() {}

    /** A day; a time of midnight behind it, as spreadsheets export it, does not matter. */
    public static LocalDate date(String text, CellContext context) {
        Matcher midnight = MIDNIGHT.matcher(text);
        return day(midnight.matches() ? midnight.group(1) : text, text, context);
    }

    /** The day in {@code part} of the cell's text. */
    static LocalDate day(String part, String text, CellContext context) {
        Matcher matcher = YEAR_FIRST.matcher(part);
        if (matcher.matches()) {
            return valid(context, text, matcher.group(1), matcher.group(3), matcher.group(4));
        }
        matcher = COMPACT.matcher(part);
        if (matcher.matches()) {
            return valid(context, text, matcher.group(1), matcher.group(2), matcher.group(3));
        }
        matcher = YEAR_LAST.matcher(part);
        if (matcher.matches()) {
            return yearLast(matcher, text, context);
        }
        matcher = DAY_NAMED_MONTH.matcher(part);
        if (matcher.matches()) {
            return valid(context, text, matcher.group(3), month(context, text, matcher.group(2)), matcher.group(1));
        }
        matcher = NAMED_MONTH_DAY.matcher(part);
        if (matcher.matches()) {
            return valid(context, text, matcher.group(3), month(context, text, matcher.group(1)), matcher.group(2));
        }
        throw noDate(part, text, context);
    }

    private static LocalDate yearLast(Matcher matcher, String text, CellContext context) {
        String first = matcher.group(1);
        String second = matcher.group(3);
        String year = matcher.group(4);
        int one = Integer.parseInt(first);
        int two = Integer.parseInt(second);
        boolean dots = matcher.group(2).equals(".");
        if (dots || context.dates() == DateOrder.DAY_FIRST) {
            return valid(context, text, year, second, first);
        }
        if (context.dates() == DateOrder.MONTH_FIRST) {
            return valid(context, text, year, first, second);
        }
        if (one <= 12 && two <= 12 && one != two) {
            throw new InvalidValueException(
                    context.column(),
                    text,
                    "can be read in two ways, " + iso(year, two, one) + " or " + iso(year, one, two),
                    "write it as yyyy-mm-dd, or end the heading in _dmy or _mdy to say which comes first");
        }
        return one > 12 ? valid(context, text, year, second, first) : valid(context, text, year, first, second);
    }

    private static String iso(String year, int month, int day) {
        return String.format(Locale.ROOT, "%s-%02d-%02d", year, month, day);
    }

    private static LocalDate valid(CellContext context, String text, String year, String month, String day) {
        int number = Integer.parseInt(year);
        if (number < FIRST_YEAR || number > LAST_YEAR) {
            throw new InvalidValueException(
                    context.column(),
                    text,
                    "the year must be from " + FIRST_YEAR + " to " + LAST_YEAR,
                    "correct the year");
        }
        try {
            return LocalDate.of(number, Integer.parseInt(month), Integer.parseInt(day));
        } catch (DateTimeException e) {
            String order = context.dates() == DateOrder.UNSTATED ? "" : ", and name the right order of day and month";
            throw new InvalidValueException(
                    context.column(),
                    text,
                    "there is no day " + Integer.parseInt(day) + " of month " + Integer.parseInt(month) + " in " + year,
                    "correct the date" + order);
        }
    }

    private static String month(CellContext context, String text, String name) {
        String wanted = name.toUpperCase(Locale.ROOT);
        for (Month month : Month.values()) {
            if (month.name().startsWith(wanted) || (wanted.equals("SEPT") && month == Month.SEPTEMBER)) {
                return String.valueOf(month.getValue());
            }
        }
        throw noDate(text, text, context);
    }

    private static InvalidValueException noDate(String part, String text, CellContext context) {
        String reason = "is not a date";
        if (SHORT_YEAR.matcher(part).matches()) {
            reason = "gives the year with two digits";
        } else if (SERIAL.matcher(part).matches()) {
            reason = "is a number, not a date (a spreadsheet's day count without its date format)";
        }
        return new InvalidValueException(context.column(), text, reason, "write it as yyyy-mm-dd, such as 2026-04-25");
    }
}
