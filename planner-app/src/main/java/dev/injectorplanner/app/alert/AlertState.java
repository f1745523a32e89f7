package dev.injectorplanner.app.alert;

import java.util.Locale;

/** Where an alert stands. */
public enum AlertState {
    /** Nobody has taken note yet. */
    RAISED("new"),
    /** Somebody has taken note; it stays open. */
    SEEN("acknowledged"),
    /** A planned visit covers it. */
    PLANNED("planned"),
    /** Quiet until a date, with a reason. */
    MUTED("snoozed"),
    /** Its cause is gone. */
    CLEARED("cleared");

    private final String word;

    AlertState(String word) {
        this.word = word;
    }

    /** As a person writes it. */
    public String word() {
        return word;
    }

    /**
     * The state with a word; the stored name is read as well.
     *
     * @throws IllegalArgumentException where no state is called that
     */
    public static AlertState of(String word) {
        String plain = word.strip();
        for (AlertState state : values()) {
            if (state.word.equalsIgnoreCase(plain)) {
                return state;
            }
        }
        return valueOf(plain.toUpperCase(Locale.ROOT));
    }
}
