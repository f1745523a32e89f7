package dev.injectorplanner.app.desk;

import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.days.DayPin;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A truck's hold on one line, so that it can be put back: truck, kind, week, day, bay, start, when, by whom, why; blanks for what
 * there is none of. Fields are apart by a tab, which no name holds.
 */
final class HeldBefore {
    private static final int FIELDS = 9;

    private HeldBefore() {}

    static String write(Hold hold) {
        DayPin day = hold.day();
        return String.join(
                "\t",
                hold.truck(),
                hold.kind().name(),
                text(hold.week()),
                day == null ? "" : text(day.day()),
                day == null ? "" : text(day.bay()),
                day == null ? "" : text(day.start()),
                hold.madeAt().toString(),
                hold.madeBy(),
                hold.why().replaceAll("\\s", " "));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    static Hold read(String line) {
        String[] field = line.split("\t", FIELDS);
        DayPin day = field[3].isEmpty()
                ? null
                : new DayPin(
                        LocalDate.parse(field[3]),
                        field[4].isEmpty() ? null : Integer.valueOf(field[4]),
                        field[5].isEmpty() ? null : LocalTime.parse(field[5]));
        return new Hold(
                field[0],
                Hold.Kind.valueOf(field[1]),
                field[2].isEmpty() ? null : IsoWeek.parse(field[2]),
                Instant.parse(field[6]),
                field[7],
                field[8],
                day);
    }
}
