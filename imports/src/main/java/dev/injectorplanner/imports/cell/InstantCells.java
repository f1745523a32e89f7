package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Moments: a date, a time of day (without one: 00:00), and an offset or Z (without one: the time of the truck's depot).
 * A local time that a clock change leaves out moves on by the gap, one that comes twice is the earlier of the two, as
 * {@link java.time.ZonedDateTime#ofLocal} says. Kept to the microsecond, the finest that a database keeps.
 */
public final class InstantCells {
    private static final Pattern MOMENT = Pattern.compile("(.+?)(?:(?:\\s*[Tt]|\\s+|,\\s*)"
            + "([0-9]{1,2}):([0-9]{2})(?::([0-9]{2})(?:[.,]([0-9]{1,9}))?)?\\s*([AaPp][Mm])?"
            + "\\s*([Zz]|UTC|[+-][0-9]{2}(?::?[0-9]{2})?)?)?");

    /** How the refusal of a local time begins whose truck has no known depot. */
    public static final String NO_DEPOT = "is a local time, and the depot of truck ";

    private InstantCells() {}

    public static Instant instant(String text, CellContext context) {
        Matcher matcher = MOMENT.matcher(text);
        if (!matcher.matches()) {
            throw unreadable(text, context);
        }
        LocalDate day = DateCells.day(matcher.group(1), text, context);
        LocalTime time = matcher.group(2) == null ? LocalTime.MIDNIGHT : time(matcher, text, context);
        String offset = matcher.group(7);
        ZoneId zone = offset == null ? zoneOfDepot(text, context) : offset(offset, text, context);
        return day.atTime(time).atZone(zone).toInstant().truncatedTo(ChronoUnit.MICROS);
    }

    private static LocalTime time(Matcher matcher, String text, CellContext context) {
        int hour = Integer.parseInt(matcher.group(2));
        String half = matcher.group(6);
        if (half != null) {
            if (hour < 1 || hour > 12) {
                throw unreadable(text, context);
            }
            hour = hour % 12 + (half.toUpperCase(Locale.ROOT).equals("PM") ? 12 : 0);
        }
        try {
            return LocalTime.of(
                    hour,
                    Integer.parseInt(matcher.group(3)),
                    matcher.group(4) == null ? 0 : Integer.parseInt(matcher.group(4)),
                    nanos(matcher.group(5)));
        } catch (DateTimeException e) {
            throw unreadable(text, context);
        }
    }

    private static int nanos(@Nullable String fraction) {
        return fraction == null ? 0 : Integer.parseInt((fraction + "000000000").substring(0, 9));
    }

    private static ZoneId offset(String offset, String text, CellContext context) {
        try {
            return offset.equals("UTC") ? ZoneOffset.UTC : ZoneOffset.of(offset.toUpperCase(Locale.ROOT));
        } catch (DateTimeException e) {
            throw unreadable(text, context);
        }
    }

    private static ZoneId zoneOfDepot(String text, CellContext context) {
        ZoneId zone = context.truck().isEmpty() ? null : context.zoneOfTruck().apply(context.truck());
        if (zone == null) {
            throw new InvalidValueException(
                    context.column(),
                    text,
                    NO_DEPOT + "\"" + context.truck() + "\" is not known",
                    "load the truck first, or write the time with its offset, such as 2026-04-25T14:30Z");
        }
        return zone;
    }

    private static InvalidValueException unreadable(String text, CellContext context) {
        return new InvalidValueException(
                context.column(), text, "is not a date with a time of day", "write it as 2026-04-25 14:30");
    }
}
