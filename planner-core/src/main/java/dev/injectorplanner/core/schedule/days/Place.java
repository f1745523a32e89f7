package dev.injectorplanner.core.schedule.days;

import java.util.Comparator;

/**
 * Where a visit could stand. Days are numbers within the week's open days, minutes count from midnight.
 *
 * @param bay from 0
 * @param firstDay day it starts
 * @param startMinute when
 * @param labourMinutes labour on each day from the first on
 * @param endMinute when it is done on its last day
 * @param nights calendar nights it stands
 */
record Place(int bay, int firstDay, int startMinute, int[] labourMinutes, int endMinute, long nights) {
    /** Fewest nights first, then the earliest end, then the lowest bay. */
    static final Comparator<Place> BEST_FIRST = Comparator.comparingLong(Place::nights)
            .thenComparingInt(Place::lastDay)
            .thenComparingInt(Place::endMinute)
            .thenComparingInt(Place::firstDay)
            .thenComparingInt(Place::startMinute)
            .thenComparingInt(Place::bay);

    int lastDay() {
        return firstDay + labourMinutes.length - 1;
    }
}
