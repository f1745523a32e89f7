package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.plan.Holds;
import java.time.Instant;
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
 */
record VisitAction(Kind kind, String truck, @Nullable IsoWeek week) {
    enum Kind {
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
            throw new InvalidValueException("do", kind, "is not one of pin, move, block, never", "choose one of them");
        }
        return new VisitAction(
                act,
                truck,
                switch (act) {
                    case MOVE -> IsoWeek.parse(to);
                    case PIN, BLOCK -> IsoWeek.parse(from);
                    case NEVER -> null;
                });
    }

    /** To be previewed. */
    Holds tried() {
        if (week == null) {
            return new Holds(Map.of(), Map.of(truck, Set.of()), Map.of());
        }
        return kind == Kind.BLOCK
                ? new Holds(Map.of(), Map.of(truck, Set.of(week)), Map.of())
                : new Holds(Map.of(truck, week), Map.of(), Map.of());
    }

    /** To be stored. */
    Hold hold(Instant at, String by, String why) {
        boolean pins = kind == Kind.PIN || kind == Kind.MOVE;
        return new Hold(truck, pins ? Hold.Kind.PIN : Hold.Kind.REFUSE, week, at, by, why);
    }

    /** {@code Move T005 to W12}. */
    String words() {
        String to = week == null ? "" : week.toString();
        return switch (kind) {
            case PIN -> "Pin " + truck + " to " + to;
            case MOVE -> "Move " + truck + " to " + to;
            case BLOCK -> "Block " + truck + " in " + to;
            case NEVER -> "Block " + truck + " in every week";
        };
    }
}
