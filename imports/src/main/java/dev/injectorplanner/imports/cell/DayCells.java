package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days of the week: {@code Mon-Fri}, {@code Monday to Friday}, {@code Mon Tue Sat}, {@code all}. */
public final class DayCells {
    private static final Pattern ITEM = Pattern.compile(
            "([A-Za-z]{3,9})\\.?(?:\\s*(?:-|\u2013|\\bto\\b)\\s*([A-Za-z]{3,9})\\.?)?(?:[\\s,;/+&]+|$)");

    private DayCells() {}

    public static Set<DayOfWeek> read(String column, String text) {
        if (text.equalsIgnoreCase("all")) {
            return EnumSet.allOf(DayOfWeek.class);
        }
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        Matcher item = ITEM.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (!item.find(at) || item.start() != at) {
                throw unknown(column, text);
            }
            DayOfWeek first = day(column, text, item.group(1));
            DayOfWeek last = item.group(2) == null ? first : day(column, text, item.group(2));
            for (DayOfWeek day = first; ; day = day.plus(1)) {
                days.add(day);
                if (day == last) {
                    break;
                }
            }
            at = item.end();
        }
        return days;
    }

    static DayOfWeek one(String column, String text) {
        Set<DayOfWeek> days = read(column, text);
        if (days.size() != 1) {
            throw new InvalidValueException(
                    column, text, "does not name one day of the week", "write a row for each day, such as Mon");
        }
        return days.iterator().next();
    }

    private static DayOfWeek day(String column, String text, String name) {
        String wanted = name.toUpperCase(Locale.ROOT);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().startsWith(wanted)) {
                return day;
            }
        }
        throw unknown(column, text);
    }

    private static InvalidValueException unknown(String column, String text) {
        return new InvalidValueException(
                column, text, "does not name days of the week", "write them as Mon-Fri or Mon Tue Sat");
    }

    /** Runs of three and more as {@code Mon-Fri}, others one by one. */
    public static String write(Set<DayOfWeek> days) {
        List<String> words = new ArrayList<>();
        DayOfWeek[] all = DayOfWeek.values();
        for (int i = 0; i < all.length; i++) {
            int end = i;
            while (end < all.length && days.contains(all[end])) {
                end++;
            }
            if (end - i >= 3) {
                words.add(shortName(all[i]) + "-" + shortName(all[end - 1]));
                i = end - 1;
            } else if (end > i) {
                words.add(shortName(all[i]));
            }
        }
        return String.join(" ", words);
    }

    private static String shortName(DayOfWeek day) {
        return day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT);
    }
}
