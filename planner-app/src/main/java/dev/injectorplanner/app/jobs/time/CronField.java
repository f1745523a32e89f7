package dev.injectorplanner.app.jobs.time;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/**
 * One field of a crontab line: {@code *}, numbers, ranges, lists, steps; names of months and days of the week.
 *
 * @param any written as {@code *}, or {@code *} with a step
 * @param values the numbers it allows
 */
record CronField(boolean any, BitSet values) {
    private static final List<String> MONTHS =
            List.of("", "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final List<String> DAYS = List.of("sun", "mon", "tue", "wed", "thu", "fri", "sat");

    /** What a field is about. */
    enum Part {
        MINUTE("minute", 0, 59, List.of()),
        HOUR("hour", 0, 23, List.of()),
        DAY("day of the month", 1, 31, List.of()),
        MONTH("month", 1, 12, MONTHS),
        WEEKDAY("day of the week", 0, 7, DAYS);

        private final String words;
        private final int least;
        private final int most;
        private final List<String> names;

        Part(String words, int least, int most, List<String> names) {
            this.words = words;
            this.least = least;
            this.most = most;
            this.names = names;
        }
    }

    static CronField of(Part part, String text) {
        BitSet values = new BitSet();
        for (String item : text.split(",", -1)) {
            add(part, item, values);
        }
        if (part == Part.WEEKDAY && values.get(7)) {
            values.set(0);
            values.clear(7);
        }
        return new CronField(text.startsWith("*"), values);
    }

    boolean has(int value) {
        return values.get(value);
    }

    private static void add(Part part, String item, BitSet values) {
        String[] stepped = item.split("/", 2);
        int step = stepped.length == 2 ? number(part, stepped[1], 1, part.most) : 1;
        int first;
        int last;
        if (stepped[0].equals("*")) {
            first = part.least;
            last = part == Part.WEEKDAY ? 6 : part.most;
        } else {
            String[] range = stepped[0].split("-", 2);
            first = value(part, range[0]);
            last = range.length == 2 ? value(part, range[1]) : stepped.length == 2 ? part.most : first;
        }
        if (last < first) {
            throw refused(part, item, "ends before it begins");
        }
        for (int value = first; value <= last; value += step) {
            values.set(value);
        }
    }

    private static int value(Part part, String text) {
        int named = part.names.indexOf(text.toLowerCase(Locale.ROOT));
        return named >= 0 && !text.isEmpty() ? named : number(part, text, part.least, part.most);
    }

    private static int number(Part part, String text, int least, int most) {
        if (!text.matches("\\d{1,2}") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw refused(part, text, "is no " + part.words + " from " + least + " to " + most);
        }
        return Integer.parseInt(text);
    }

    private static InvalidValueException refused(Part part, String text, String why) {
        return new InvalidValueException(
                "times",
                text,
                why,
                "write minute, hour, day of the month, month and day of the week, such as 30 2 * * *");
    }
}
