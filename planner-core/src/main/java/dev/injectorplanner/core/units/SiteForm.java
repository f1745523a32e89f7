package dev.injectorplanner.core.units;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a site wants its papers: units, currency, form of dates, size of paper. Storage and engine know none of it.
 *
 * @param units units of figures
 * @param currency sign or code of the currency, such as EUR or $, at most {@value #MOST_CURRENCY} characters; empty: not said
 * @param dates form of dates on sheets and mails
 * @param paper size of printed pages
 */
public record SiteForm(SiteUnits units, String currency, DateForm dates, PaperSize paper) {
    /** The longest currency sign. */
    public static final int MOST_CURRENCY = 5;

    private static final Pattern ISO_DATE = Pattern.compile("(?<![\\w-])\\d{4}-\\d{2}-\\d{2}(?![\\w-])");
    private static final Pattern SPREADSHEET_LETTERS = Pattern.compile("[=+@\\-\\d]|\\p{Cntrl}");

    /** Km, litres, degrees C, no currency said, dates with the month's name, A4. */
    public static final SiteForm STANDARD = new SiteForm(SiteUnits.METRIC, "", DateForm.WORDS, PaperSize.A4);

    /** Forms of dates. */
    public enum DateForm {
        /** 2 Mar 2026, as on pages: read in one way everywhere. */
        WORDS("d MMM uuuu", "d mmm yyyy"),
        /** 2026-03-02. */
        ISO("uuuu-MM-dd", "yyyy-mm-dd"),
        /** 02/03/2026. */
        DAY_FIRST("dd/MM/uuuu", "dd/mm/yyyy"),
        /** 03/02/2026. */
        MONTH_FIRST("MM/dd/uuuu", "mm/dd/yyyy");

        private final DateTimeFormatter formatter;
        private final String cellPattern;

        DateForm(String pattern, String cellPattern) {
            this.formatter = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
            this.cellPattern = cellPattern;
        }

        /** A day in this form. */
        public String of(LocalDate day) {
            return formatter.format(day);
        }

        /** A sentence of the engine, which writes ISO dates, with its dates in this form. */
        public String sentence(String engine) {
            return this == ISO ? engine : dated(engine, this::of);
        }

        /** The form as spreadsheet programs write it. */
        public String cellPattern() {
            return cellPattern;
        }
    }

    /** Sizes of printed pages. */
    public enum PaperSize {
        A4,
        LETTER
    }

    public SiteForm {
        currency = currency.strip();
        if (currency.length() > MOST_CURRENCY
                || SPREADSHEET_LETTERS.matcher(currency).find()) {
            throw new InvalidValueException(
                    "currency",
                    currency,
                    "is not a currency's sign or code",
                    "enter at most " + MOST_CURRENCY + " characters without digits, such as EUR or $");
        }
    }

    /** A heading of amounts with the currency: {@code Price, EUR}. */
    public String money(String heading) {
        return currency.isEmpty() ? heading : heading + ", " + currency;
    }

    /** The same for a terminal, where dates are typed back: ISO unless the site chose another form in numbers. */
    public SiteForm inTerminal() {
        return dates == DateForm.WORDS ? new SiteForm(units, currency, DateForm.ISO, paper) : this;
    }

    /** A sentence of the engine in the site's units and dates. */
    public String sentence(String engine) {
        return dates.sentence(units.sentence(engine));
    }

    /** A text with each ISO date in it written by {@code form}; parts of longer names, such as order numbers, stay. */
    public static String dated(String text, Function<LocalDate, String> form) {
        Matcher found = ISO_DATE.matcher(text);
        StringBuilder made = new StringBuilder();
        while (found.find()) {
            found.appendReplacement(made, Matcher.quoteReplacement(written(found.group(), form)));
        }
        return found.appendTail(made).toString();
    }

    private static String written(String iso, Function<LocalDate, String> form) {
        try {
            return form.apply(LocalDate.parse(iso));
        } catch (DateTimeException e) { // a serial that looks like a date
            return iso;
        }
    }
}
