package dev.injectorplanner.app.holds;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
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
 */
public record Hold(String truck, Kind kind, @Nullable IsoWeek week, Instant madeAt, String madeBy, String why) {
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

    /** {@code pinned to 2026-W12 (driver asked)}. */
    public String words() {
        String held =
                kind == Kind.PIN ? "pinned to " + week : week == null ? "blocked in every week" : "blocked in " + week;
        return held + (why.isEmpty() ? "" : " (" + why + ")");
    }

    /** Holds of one slot replace each other: a truck has one pin, and one block a week. */
    String slot() {
        return kind == Kind.PIN ? "pin" : week == null ? "never" : week.toString();
    }
}
