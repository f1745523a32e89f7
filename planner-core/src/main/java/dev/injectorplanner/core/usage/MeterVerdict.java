package dev.injectorplanner.core.usage;

/** What a meter reading is when checked against the last good one before it. */
public enum MeterVerdict {
    /** Went on at a believable pace. */
    ACCEPTED(true),
    /** Stands where it stood: parked. */
    NO_USE(true),
    /** A person said that the meter was replaced: a new segment begins. */
    REPLACED(true),
    /** A six-digit odometer passed from 999,999 to 0. */
    ROLL_OVER(true),
    /** Went back without a word: left out, not guessed. */
    ROLL_BACK(false),
    /** More in the time than any truck can do: left out. */
    IMPLAUSIBLE(false),
    /** Looks like miles entered for kilometres: left out. */
    MILES_FOR_KM(false);

    private final boolean usable;

    MeterVerdict(boolean usable) {
        this.usable = usable;
    }

    /** Whether the reading may tell of usage. */
    public boolean usable() {
        return usable;
    }
}
