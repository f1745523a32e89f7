package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day, such as {@code 7:00} and {@code 15:30}; 24:00 is the last minute of the day. */
final class TimeCells {
    private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})(?::00)?");
    private static final LocalTime LAST_MINUTE = LocalTime.of(23, 59);

    private TimeCells() {}

    static LocalTime read(String column, String text) {
        Matcher time = TIME.matcher(text.strip());
        if (!time.matches()) {
            throw unknown(column, text);
        }
        int hour = Integer.parseInt(time.group(1));
        int minute = Integer.parseInt(time.group(2));
        if (hour == 24 && minute == 0) {
            return LAST_MINUTE;
        }
        try {
            return LocalTime.of(hour, minute);
        } catch (DateTimeException e) {
            throw unknown(column, text);
        }
    }

    private static InvalidValueException unknown(String column, String text) {
        return new InvalidValueException(
                column, text, "is not a time of day", "write hours and minutes of 24 hours, such as 07:00 or 15:30");
    }
}
