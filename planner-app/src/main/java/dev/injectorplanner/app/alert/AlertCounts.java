package dev.injectorplanner.app.alert;

import java.util.StringJoiner;

/**
 * What an update did.
 *
 * @param raised new alerts, and cleared ones that were found again
 * @param planned alerts that a visit answers now and did not before
 * @param unplanned alerts that lost their visit
 * @param back alerts whose silence ended
 * @param cleared alerts whose due item has gone
 * @param refreshed alerts with newer evidence and nothing else
 * @param unchanged alerts as they were
 */
public record AlertCounts(int raised, int planned, int unplanned, int back, int cleared, int refreshed, int unchanged) {
    static final AlertCounts NONE = new AlertCounts(0, 0, 0, 0, 0, 0, 0);

    /** Both together. */
    public AlertCounts plus(AlertCounts other) {
        return new AlertCounts(
                raised + other.raised,
                planned + other.planned,
                unplanned + other.unplanned,
                back + other.back,
                cleared + other.cleared,
                refreshed + other.refreshed,
                unchanged + other.unchanged);
    }

    /** Whether the state of any alert changed. */
    boolean anyChange() {
        return raised + planned + unplanned + back + cleared > 0;
    }

    /** {@code 3 raised, 1 cleared}. */
    String words() {
        StringJoiner words = new StringJoiner(", ");
        add(words, raised, "raised");
        add(words, planned, "covered by a visit");
        add(words, unplanned, "lost their visit");
        add(words, back, "back from snooze");
        add(words, cleared, "cleared");
        return words.toString();
    }

    private static void add(StringJoiner words, int count, String what) {
        if (count > 0) {
            words.add(count + " " + what);
        }
    }

    static AlertCounts raised(int count) {
        return new AlertCounts(count, 0, 0, 0, 0, 0, 0);
    }

    /** One alert's step. */
    static AlertCounts of(Alert before, NextState.Step step) {
        AlertState from = before.state();
        AlertState to = step.alert().state();
        boolean same = before.equals(step.alert());
        return new AlertCounts(
                0,
                to == AlertState.PLANNED && from != to ? 1 : 0,
                from == AlertState.PLANNED && from != to && to != AlertState.CLEARED ? 1 : 0,
                from == AlertState.MUTED && to == AlertState.RAISED ? 1 : 0,
                to == AlertState.CLEARED ? 1 : 0,
                from == to && !same ? 1 : 0,
                same ? 1 : 0);
    }
}
