package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;

/**
 * Minutes of a day in which bays are worked in.
 *
 * @param from first minute, counted from midnight
 * @param to the minute after the last
 */
public record Span(int from, int to) {
    private static final int DAY = 24 * 60;

    public Span {
        Require.within("from", from, 0, DAY - 1);
        Require.within("to", to, from + 1, DAY);
    }

    int minutes() {
        return to - from;
    }
}
