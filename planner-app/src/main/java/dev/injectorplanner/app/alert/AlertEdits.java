package dev.injectorplanner.app.alert;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/** Alerts with one thing changed. */
final class AlertEdits {
    private AlertEdits() {}

    static Alert seen(Alert alert, AlertState state, Instant at) {
        Instant first = alert.seenAt() == null ? at : alert.seenAt();
        return in(alert, state, first, alert.mutedUntil(), alert.mutedWhy(), null, null);
    }

    static Alert muted(Alert alert, LocalDate until, String why) {
        return in(alert, AlertState.MUTED, alert.seenAt(), until, why, null, null);
    }

    static Alert cleared(Alert alert, Instant at, String why) {
        return in(alert, AlertState.CLEARED, alert.seenAt(), null, null, at, why);
    }

    static Alert openAgain(Alert alert, AlertState state) {
        return in(alert, state, alert.seenAt(), null, null, null, null);
    }

    static Alert ofJob(long id, @Nullable String depot, String name, String error, Instant at) {
        return new Alert(
                id,
                depot,
                null,
                null,
                AlertKey.JOB,
                name,
                AlertState.RAISED,
                null,
                error,
                "every run ends well",
                "planner default",
                at.atZone(ZoneOffset.UTC).toLocalDate(),
                null,
                at,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    private static Alert in(
            Alert alert,
            AlertState state,
            @Nullable Instant seenAt,
            @Nullable LocalDate mutedUntil,
            @Nullable String mutedWhy,
            @Nullable Instant clearedAt,
            @Nullable String clearedWhy) {
        return new Alert(
                alert.id(),
                alert.depot(),
                alert.truck(),
                alert.cylinder(),
                alert.rule(),
                alert.subject(),
                state,
                alert.action(),
                alert.evidence(),
                alert.limit(),
                alert.limitSource(),
                alert.by(),
                state == AlertState.PLANNED ? alert.visitWeek() : null,
                alert.raisedAt(),
                seenAt,
                mutedUntil,
                mutedWhy,
                clearedAt,
                clearedWhy,
                alert.told());
    }
}
