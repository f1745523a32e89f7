package dev.injectorplanner.app.store;

/** What a record that came in meant for the store. */
public enum Change {
    ADDED,
    CHANGED,
    UNCHANGED
}
