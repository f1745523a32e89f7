package dev.injectorplanner.core.calendar;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A week of ISO 8601: Monday to Sunday, week 1 holds the year's first Thursday.
 *
 * @param year week-based year, which differs from the calendar's around New Year
 * @param week 1 to 53
 */
public record IsoWeek(int year, int week) implements Comparable<IsoWeek> {
    private static final Pattern WRITTEN = Pattern.compile("(\\d{4})-?W(\\d{2})");

    /** Every year has 52 weeks, some have one more. */
    private static final int SURE_WEEKS = 52;

    public IsoWeek {
        Require.within("week", week, 1, week > SURE_WEEKS ? weeksOf(year) : SURE_WEEKS);
    }

    private static int weeksOf(int year) {
        return (int) IsoFields.WEEK_OF_WEEK_BASED_YEAR
                .rangeRefinedBy(LocalDate.of(year, 7, 1))
                .getMaximum();
    }

    /** The week that holds a day. */
    public static IsoWeek of(LocalDate day) {
        return new IsoWeek(day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    /** Reads {@code 2026-W48}, the extended form of ISO 8601, or {@code 2026W48}, the basic one. */
    public static IsoWeek parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new InvalidValueException("week", text, "is not an ISO week", "write it as 2026-W48");
        }
        return new IsoWeek(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    public LocalDate monday() {
        return LocalDate.of(year, 1, 4)
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                .plusWeeks(week - 1L);
    }

    public LocalDate sunday() {
        return monday().plusDays(6);
    }

    /** The week {@code weeks} later, or earlier where negative. */
    public IsoWeek plus(int weeks) {
        return of(monday().plusWeeks(weeks));
    }

    /** Weeks from this one to another, negative where that is earlier. */
    public int weeksUntil(IsoWeek other) {
        return (int) ChronoUnit.WEEKS.between(monday(), other.monday());
    }

    @Override
    public int compareTo(IsoWeek other) {
        return year != other.year ? Integer.compare(year, other.year) : Integer.compare(week, other.week);
    }

    /** The extended form of ISO 8601: {@code 2026-W48}. */
    @Override
    public String toString() {
        return (year >= 1000 && year <= 9999 ? String.valueOf(year) : String.format(Locale.ROOT, "%04d", year))
                + (week < 10 ? "-W0" : "-W")
                + week;
    }
}
