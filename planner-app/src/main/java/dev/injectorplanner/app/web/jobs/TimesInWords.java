package dev.injectorplanner.app.web.jobs;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of jobs as people say them: {@code every weekday at 02:30}. What has no such words is shown as its crontab line. */
final class TimesInWords {
    private static final Pattern DAILY = Pattern.compile("(\\d{1,2}) (\\d{1,2}) \\* \\* (\\*|1-5|[0-7])");
    private static final Pattern MONTHLY = Pattern.compile("(\\d{1,2}) (\\d{1,2}) (\\d{1,2}) \\* \\*");
    private static final Pattern HOURLY = Pattern.compile("(\\d{1,2}) \\* \\* \\* \\*");
    private static final Pattern MINUTES = Pattern.compile("\\*/(\\d{1,2}) \\* \\* \\* \\*");
    private static final int DAYS = 7;

    private TimesInWords() {}

    static String of(String line) {
        Matcher daily = DAILY.matcher(line);
        if (daily.matches()) {
            return "every " + day(daily.group(3)) + " at " + time(daily.group(2), daily.group(1));
        }
        Matcher monthly = MONTHLY.matcher(line);
        if (monthly.matches()) {
            return "on day " + monthly.group(3) + " of each month at " + time(monthly.group(2), monthly.group(1));
        }
        Matcher hourly = HOURLY.matcher(line);
        if (hourly.matches()) {
            return hourly.group(1).equals("0") ? "every hour" : "every hour, " + hourly.group(1) + " minutes past";
        }
        Matcher minutes = MINUTES.matcher(line);
        return minutes.matches() ? "every " + minutes.group(1) + " minutes" : line;
    }

    private static String day(String field) {
        return switch (field) {
            case "*" -> "day";
            case "1-5" -> "weekday";
            default -> name(DayOfWeek.of(field.equals("0") ? DAYS : Integer.parseInt(field)));
        };
    }

    private static String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.UK);
    }

    private static String time(String hour, String minute) {
        return String.format(Locale.ROOT, "%02d:%02d", Integer.parseInt(hour), Integer.parseInt(minute));
    }

    /** How often a form offers, by what it sends. */
    static Map<String, String> choices() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("*", "every day");
        choices.put("1-5", "every weekday");
        for (DayOfWeek day : DayOfWeek.values()) {
            choices.put(String.valueOf(day.getValue()), "every " + name(day));
        }
        choices.put("hour", "every hour, at that minute");
        choices.put("off", "by hand only");
        choices.put("default", "planner default");
        return choices;
    }

    /**
     * The crontab line of a form.
     *
     * @param often one of the choices that has a time
     * @param at hours and minutes
     * @throws InvalidValueException where one of them cannot be read
     */
    static String line(String often, String at) {
        LocalTime time;
        try {
            time = LocalTime.parse(at.strip());
        } catch (DateTimeParseException e) {
            throw new InvalidValueException("at", at, "is not a time", "write it as 02:30");
        }
        if (!choices().containsKey(often)) {
            throw new InvalidValueException("often", often, "is not one of the choices", "choose one of the page");
        }
        return often.equals("hour")
                ? time.getMinute() + " * * * *"
                : time.getMinute() + " " + time.getHour() + " * * " + often;
    }

    /** The time of day of a line, for its form; {@code 02:00} where it has none. */
    static String at(String line) {
        Matcher daily = DAILY.matcher(line);
        return daily.matches() ? time(daily.group(2), daily.group(1)) : "02:00";
    }
}
