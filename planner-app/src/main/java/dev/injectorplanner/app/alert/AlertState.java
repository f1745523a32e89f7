package dev.injectorplanner.app.alert;

import java.util.Locale;

/** Where an alert stands. */
public enum AlertState {
    /** New, nobody has said that they know. */
    RAISED,
    /** Somebody knows; it stays open. */
    SEEN,
    /** A visit of the plan answers it. */
    PLANNED,
    /** Silent until a date, with a reason. */
    MUTED,
    /** What it was about has gone. */
    CLEARED;

    /** As a person writes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
