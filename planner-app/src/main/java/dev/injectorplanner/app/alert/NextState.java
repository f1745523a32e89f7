package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What a plan makes of an open alert. A pure function, so that each rule is a test. */
final class NextState {
    private final LocalDate today;
    private final Instant at;

    NextState(LocalDate today, Instant at) {
        this.today = today;
        this.at = at;
    }

    /** The alert as it is from now on, and why; where only evidence changed {@code why} is empty. */
    record Step(Alert alert, String why) {}

    /**
     * @param found what the plan found of it, or null
     * @param happened what ended it, where nothing was found
     */
    Step of(Alert alert, @Nullable PlannedItem found, String happened) {
        if (found == null) {
            boolean mayComeBack = happened.startsWith(ClearedReason.NOT_FOUND);
            return isSilent(alert) && mayComeBack
                    ? new Step(alert, "")
                    : new Step(AlertEdits.cleared(alert, at, happened), happened);
        }
        if (isSilent(alert)) {
            return new Step(with(alert, found, AlertState.MUTED, alert.told()), "");
        }
        IsoWeek week = found.week();
        if (alert.state() == AlertState.MUTED) {
            AlertState back = week == null ? AlertState.RAISED : AlertState.PLANNED;
            return new Step(with(alert, found, back, null), "was snoozed until " + alert.mutedUntil());
        }
        if (week != null) {
            String why = alert.state() == AlertState.PLANNED ? "" : "a visit in " + week + " covers it";
            return new Step(with(alert, found, AlertState.PLANNED, alert.told()), why);
        }
        if (alert.state() == AlertState.PLANNED) {
            AlertState back = alert.seenAt() == null ? AlertState.RAISED : AlertState.SEEN;
            return new Step(
                    with(alert, found, back, alert.told()), "no visit of the plan of " + today + " covers it any more");
        }
        return new Step(with(alert, found, alert.state(), alert.told()), "");
    }

    private boolean isSilent(Alert alert) {
        LocalDate until = alert.mutedUntil();
        return until != null && today.isBefore(until);
    }

    /** The evidence of today in a state; what belongs to another state is dropped. */
    static Alert with(Alert alert, PlannedItem found, AlertState state, @Nullable AlertState told) {
        var item = found.item();
        boolean muted = state == AlertState.MUTED;
        return new Alert(
                alert.id(),
                item.depot(),
                alert.truck(),
                alert.cylinder(),
                alert.rule(),
                alert.subject(),
                state,
                item.action().name(),
                item.evidence(),
                item.limit(),
                item.limitSource(),
                item.by(),
                state == AlertState.PLANNED ? found.week() : null,
                alert.raisedAt(),
                alert.seenAt(),
                muted ? alert.mutedUntil() : null,
                muted ? alert.mutedWhy() : null,
                null,
                null,
                told);
    }
}
