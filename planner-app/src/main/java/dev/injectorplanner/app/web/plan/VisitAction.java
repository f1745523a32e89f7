package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.schedule.days.DayPin;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a manager does with a visit.
 *
 * @param kind what
 * @param truck the truck
 * @param week the week pinned, moved to or blocked; null for never
 * @param day the day, bay and start it is fixed to, or null
 */
record VisitAction(
        Kind kind,
        String truck,
        @Nullable IsoWeek week,
        @Nullable DayPin day) {
    enum Kind {
        /** Fixes a visit to a day, and to a bay and a start where they are given. */
        DAY,
        PIN,
        MOVE,
        BLOCK,
        NEVER
    }

    /**
     * As a page sends it.
     *
     * @param from week of the visit, or empty
     * @param to week to move to
     * @throws InvalidValueException where a part is missing or not known
     */
    static VisitAction of(String kind, String truck, String from, String to) {
        Kind act;
        try {
            act = Kind.valueOf(kind.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new InvalidValueException(
                    "do", kind, "is not one of day, pin, move, block, never", "choose one of them");
        }
        if (act == Kind.DAY) {
            throw new InvalidValueException("day", "", "is missing", "name the day the visit is fixed to");
        }
        return new VisitAction(
                act,
                truck,
                switch (act) {
                    case MOVE -> IsoWeek.parse(to);
                    case PIN, BLOCK -> IsoWeek.parse(from);
                    case NEVER, DAY -> null;
                },
                null);
    }

    /**
     * A visit fixed to a day, as a page sends it.
     *
     * @param day ISO date
     * @param bay counted from 1, or empty for any
     * @param start hours and minutes, or empty for any
     * @throws InvalidValueException where one of them cannot be read
     */
    static VisitAction toDay(String truck, String day, String bay, String start) {
        try {
            DayPin pin = new DayPin(
                    LocalDate.parse(day.strip()),
                    bay.isBlank() ? null : Integer.valueOf(bay.strip()),
                    start.isBlank() ? null : LocalTime.parse(start.strip()));
            return new VisitAction(Kind.DAY, truck, IsoWeek.of(pin.day()), pin);
        } catch (DateTimeParseException | NumberFormatException e) {
            throw new InvalidValueException(
                    "day",
                    (day + " " + bay + " " + start).strip(),
                    "is not a day with a bay and a start",
                    "write a day such as 2026-03-03, a bay such as 2, a start such as 09:30");
        }
    }

    /** To be previewed. */
    Holds tried() {
        if (day != null) {
            return Holds.none().withDays(Map.of(truck, day));
        }
        if (week == null) {
            return new Holds(Map.of(), Map.of(truck, Set.of()), Map.of());
        }
        return kind == Kind.BLOCK
                ? new Holds(Map.of(), Map.of(truck, Set.of(week)), Map.of())
                : new Holds(Map.of(truck, week), Map.of(), Map.of());
    }

    /** To be stored. */
    Hold hold(Instant at, String by, String why) {
        if (day != null) {
            return Hold.day(truck, day, at, by, why);
        }
        boolean pins = kind == Kind.PIN || kind == Kind.MOVE;
        return new Hold(truck, pins ? Hold.Kind.PIN : Hold.Kind.REFUSE, week, at, by, why);
    }

    /** {@code Move T005 to W12}. */
    String words() {
        String to = week == null ? "" : week.toString();
        return switch (kind) {
            case DAY -> "Move " + truck + " to " + (day == null ? to : day.words());
            case PIN -> "Pin " + truck + " to " + to;
            case MOVE -> "Move " + truck + " to " + to;
            case BLOCK -> "Block " + truck + " in " + to;
            case NEVER -> "Block " + truck + " in every week";
        };
    }
}
