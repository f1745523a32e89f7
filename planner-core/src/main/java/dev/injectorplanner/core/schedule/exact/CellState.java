package dev.injectorplanner.core.schedule.exact;

/** What a cell remembers from one round to the next: it only makes the next one quicker. */
final class CellState {
    /** Options of the best set found last, no order meant. */
    int[] pattern = new int[0];

    /** Worth of a unit of hours, 0 or more. */
    double price;

    private int[] starts = new int[0];

    int[] starts(int length) {
        if (starts.length < length) {
            starts = new int[2 * length];
        }
        return starts;
    }
}
