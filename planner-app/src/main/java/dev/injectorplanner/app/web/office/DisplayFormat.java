package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.units.Figures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Days, figures and lists as pages say them. Parts that belong together are kept on one line by no-break spaces. */
public final class DisplayFormat {
    private static final char KEPT = '\u00a0';
    private static final DateTimeFormatter DAY = format("EEE d MMM");
    private static final DateTimeFormatter DATE = format("d MMMM uuuu");
    private static final DateTimeFormatter SHORT_DATE = format("d MMM uuuu");
    private static final DateTimeFormatter TIME = format("HH:mm");

    private DisplayFormat() {}

    private static DateTimeFormatter format(String pattern) {
        return DateTimeFormatter.ofPattern(pattern.replace(' ', KEPT), Locale.UK);
    }

    /** {@code Mon 2 Mar}. */
    public static String day(LocalDate day) {
        return DAY.format(day).replace("Sept", "Sep");
    }

    /** {@code 2 March 2026}. */
    public static String date(LocalDate day) {
        return DATE.format(day);
    }

    /** {@code 2 Mar 2026}. */
    public static String shortDate(LocalDate day) {
        return SHORT_DATE.format(day).replace("Sept", "Sep");
    }

    /** {@code Mon 2 Mar, 07:30}. */
    public static String dayAndTime(LocalDateTime at) {
        return day(at.toLocalDate()) + "," + KEPT + TIME.format(at);
    }

    public static String time(LocalDateTime at) {
        return TIME.format(at);
    }

    /** {@code 2 Mar 2026, 05:10} at a place. */
    public static String moment(Instant at, ZoneId zone) {
        LocalDateTime there = LocalDateTime.ofInstant(at, zone);
        return shortDate(there.toLocalDate()) + "," + KEPT + TIME.format(there);
    }

    /** {@code Monday 2 to Friday 6 March 2026}, or with both months where they differ. */
    public static String days(LocalDate first, LocalDate last) {
        String from = first.getMonth() == last.getMonth() ? "EEEE d" : "EEEE d MMMM";
        return format(from).format(first) + " to " + format("EEEE d MMMM uuuu").format(last);
    }

    /** {@code W10}. */
    public static String week(IsoWeek week) {
        return (week.week() < 10 ? "W0" : "W") + week.week();
    }

    /** Always one decimal, for columns: {@code 6.0}. */
    public static String tenth(double value) {
        return Figures.oneDecimal(value);
    }

    /** An amount in the site's currency: {@code 1,340}, {@code −67}. */
    public static String money(double amount) {
        return Figures.whole(Math.rint(amount)).replace('-', '\u2212');
    }

    /** To the cent, for documents and lists of amounts: {@code 1,340.50}. All amounts of money go through here or above. */
    public static String cents(java.math.BigDecimal amount) {
        return String.format(Locale.ROOT, "%,.2f", amount).replace('-', '\u2212');
    }

    /** With its sign: {@code +412}, {@code −67}, {@code ±0}. */
    public static String more(double amount) {
        long whole = Math.round(amount);
        return whole == 0 ? "±0" : (whole > 0 ? "+" : "") + money(whole);
    }

    /** The same with one decimal. */
    public static String moreTenth(double amount) {
        double rounded = Math.rint(amount * 10) / 10;
        return rounded == 0 ? "±0" : (rounded > 0 ? "+" : "") + tenth(rounded).replace('-', '\u2212');
    }

    /** Costs in words: {@code costs 412}, {@code saves 67}, {@code costs nothing}. */
    public static String costs(double amount) {
        long whole = Math.round(amount);
        return whole == 0 ? "costs nothing" : (whole > 0 ? "costs " : "saves ") + money(Math.abs(whole));
    }

    /** A quantity of pieces or litres without needless decimals. */
    public static String pieces(double quantity) {
        return Figures.tenths(quantity);
    }

    /** A chance: {@code 4 %}, {@code 1.2 %} below five percent, {@code under 0.1 %}. */
    public static String chance(double chance) {
        if (chance < 0.001) {
            return "under" + KEPT + "0.1" + KEPT + "%";
        }
        return (chance < 0.05
                        ? String.format(Locale.ROOT, "%.1f", 100 * chance)
                        : String.format(Locale.ROOT, "%.0f", 100 * chance))
                + KEPT + "%";
    }

    /** Cylinders and what is done along: {@code all 6, injector test, fuel filters}. */
    public static String work(List<Integer> cylinders, int ofAll, boolean inspection, List<String> tasks) {
        String words = cylinders.isEmpty()
                ? ""
                : cylinders.size() == ofAll
                        ? "all " + ofAll
                        : (cylinders.size() == 1 ? "cylinder " : "cylinders ") + numbers(cylinders);
        if (inspection) {
            words += (words.isEmpty() ? "" : ", ") + "injector test";
        }
        return tasks.isEmpty() ? words : (words.isEmpty() ? "" : words + ", ") + String.join(", ", tasks);
    }

    /** {@code 1 2 4}. */
    public static String numbers(Collection<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** A code in groups of four, easier to compare: {@code 7Q2M 0F4K 91XA}. */
    public static String code(String code) {
        return code.replaceAll("\\s+", "").replaceAll("(.{4})(?=.)", "$1" + KEPT);
    }

    /** First letter large. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
