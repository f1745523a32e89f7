package dev.injectorplanner.core.schedule.days;

import java.util.Comparator;

/**
 * Where a visit stands. Days are numbers within the week's open days, times are ticks of the day's work, breaks left out.
 *
 * @param bay from 0
 * @param firstDay day it starts
 * @param start time on that day
 * @param labour labour on each day from the first on
 * @param end time on its last day
 */
record Place(int bay, int firstDay, int start, int[] labour, int end) {
    /** Longer than any day, so that a place has one number for its start and one for its end. */
    static final int DAY = 24 * Ticks.HOUR + 1;

    /** Fewest days first, then the earliest end, then the lowest bay. */
    static final Comparator<Place> BEST_FIRST = Comparator.comparingInt(Place::days)
            .thenComparingInt(Place::until)
            .thenComparingInt(Place::from)
            .thenComparingInt(Place::bay);

    int days() {
        return labour.length;
    }

    int lastDay() {
        return firstDay + labour.length - 1;
    }

    int from() {
        return firstDay * DAY + start;
    }

    int until() {
        return lastDay() * DAY + end;
    }

    boolean overlaps(Place other) {
        return from() < other.until() && other.from() < until();
    }

    boolean standsOn(int day) {
        return day >= firstDay && day <= lastDay();
    }

    Place in(int otherBay) {
        return new Place(otherBay, firstDay, start, labour, end);
    }
}
