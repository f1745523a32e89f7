package dev.injectorplanner.app.holds;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.schedule.days.DayPin;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A truck held by the manager.
 *
 * @param truck the truck
 * @param kind pinned to a week, or kept out of it
 * @param week the week; null for a truck that is kept out of all
 * @param madeAt when
 * @param madeBy by whom
 * @param why the reason given, or empty
 * @param day the day, bay and start that a pin fixes, or null where it fixes the week alone
 */
public record Hold(
        String truck,
        Kind kind,
        @Nullable IsoWeek week,
        Instant madeAt,
        String madeBy,
        String why,
        @Nullable DayPin day) {
    private static final int LONGEST_REASON = 2000;

    /** What a hold does. */
    public enum Kind {
        PIN,
        REFUSE
    }

    public Hold {
        truck = Require.name("truck", truck);
        madeBy = Require.name("made_by", madeBy);
        if (kind == Kind.PIN && week == null) {
            throw new InvalidValueException("week", "", "is missing", "name the week truck " + truck + " is pinned to");
        }
        if (why.length() > LONGEST_REASON) {
            throw new InvalidValueException(
                    "why", why.substring(0, 20) + "...", "is too long", "keep it to " + LONGEST_REASON + " characters");
        }
    }

    /** A hold of a week, or of all. */
    public Hold(String truck, Kind kind, @Nullable IsoWeek week, Instant madeAt, String madeBy, String why) {
        this(truck, kind, week, madeAt, madeBy, why, null);
    }

    /** A visit fixed to a day by the foreman. */
    public static Hold day(String truck, DayPin day, Instant madeAt, String madeBy, String why) {
        return new Hold(truck, Kind.PIN, IsoWeek.of(day.day()), madeAt, madeBy, why, day);
    }

    /** {@code pinned to 2026-W12 (driver asked)}. */
    public String words() {
        String held = kind == Kind.PIN
                ? "pinned to " + (day != null ? day.words() : week)
                : week == null ? "blocked in every week" : "blocked in " + week;
        return held + (why.isEmpty() ? "" : " (" + why + ")");
    }

    /** Holds of one slot replace each other: a truck has one pin, and one block a week. */
    String slot() {
        return kind == Kind.PIN ? "pin" : week == null ? "never" : week.toString();
    }
}
