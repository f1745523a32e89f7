package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.Arrays;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;

/**
 * Lives under observation as columns: each row is seen from its entry age to its exit age, where it fails (event) or is
 * lost from sight still alive. A million rows are held without boxing. Ages are all in one unit (km or hours).
 */
public final class LifeRecords {
    private final double @Nullable [] entries;
    private final double[] exits;
    private final boolean[] events;
    private final long @Nullable [] counts;
    private final double @Nullable [] shares;
    private final double @Nullable [] hazards;
    private final long eventCount;
    private final long totalCount;

    private LifeRecords(
            double @Nullable [] entries,
            double[] exits,
            boolean[] events,
            long @Nullable [] counts,
            double @Nullable [] shares,
            double @Nullable [] hazards) {
        this.entries = entries;
        this.exits = exits;
        this.events = events;
        this.counts = counts;
        this.shares = shares;
        this.hazards = hazards;
        long failed = 0;
        long all = 0;
        for (int i = 0; i < exits.length; i++) {
            long count = counts == null ? 1 : counts[i];
            all += count;
            failed += events[i] ? count : 0;
        }
        this.eventCount = failed;
        this.totalCount = all;
    }

    /** Lives seen from age 0, one unit a row. */
    public static LifeRecords of(double[] exits, boolean[] events) {
        return of(null, exits, events, null);
    }

    /**
     * Rows as columns; every column is copied.
     *
     * @param entries age at which observation began, 0 for from new; null for all 0 (left truncation: Klein and
     *     Moeschberger 2003, section 3.5)
     * @param exits age at failure or when last seen alive, above the entry
     * @param events true where the exit is a failure
     * @param counts how many units the row stands for, 1 or more; null for all 1
     * @throws InvalidValueException if a value is out of its range; its field names the row, counted from 1
     */
    public static LifeRecords of(
            double @Nullable [] entries, double[] exits, boolean[] events, long @Nullable [] counts) {
        int rows = exits.length;
        if (events.length != rows
                || (entries != null && entries.length != rows)
                || (counts != null && counts.length != rows)) {
            throw new IllegalArgumentException("columns differ in length: exits " + rows + ", events " + events.length);
        }
        boolean anyEntry = false;
        for (int i = 0; i < rows; i++) {
            double entry = entries == null ? 0 : entries[i];
            guard(i, entry, exits[i], counts == null ? 1 : counts[i]);
            anyEntry |= entry > 0;
        }
        return new LifeRecords(
                anyEntry && entries != null ? entries.clone() : null,
                exits.clone(),
                events.clone(),
                counts == null ? null : counts.clone(),
                null,
                null);
    }

    private static void guard(int row, double entry, double exit, long count) {
        if (!(exit > 0 && Double.isFinite(exit))) {
            throw new InvalidValueException(
                    "exit of row " + (row + 1), exit, "must be above zero", "enter an age above zero");
        }
        if (!(entry >= 0 && entry < exit)) {
            throw new InvalidValueException(
                    "entry of row " + (row + 1),
                    entry,
                    "must be zero or more and below the exit " + exit,
                    "enter the age at which this life came under observation");
        }
        if (count < 1) {
            throw new InvalidValueException(
                    "count of row " + (row + 1), count, "must be 1 or more", "leave the row out, or enter a count");
        }
    }

    /** The same lives, of whose failures only those at ages that pass count; the others end alive at that age. */
    public LifeRecords withEvents(DoublePredicate counts) {
        boolean[] kept = new boolean[events.length];
        for (int row = 0; row < kept.length; row++) {
            kept[row] = events[row] && counts.test(exits[row]);
        }
        return new LifeRecords(entries, exits, kept, this.counts, shares, hazards);
    }

    /**
     * The same lives, of whose failures some are only believed with a chance.
     *
     * @param believed by row, the chance that its failure is one, 0 to 1; of rows that did not fail it is not asked
     */
    public LifeRecords withEventShares(double[] believed) {
        if (believed.length != exits.length) {
            throw new IllegalArgumentException(
                    "columns differ in length: exits " + exits.length + ", shares " + believed.length);
        }
        return new LifeRecords(entries, exits, events, counts, believed.clone(), hazards);
    }

    /**
     * The same lives, whose hazards are known to differ.
     *
     * @param multipliers by row, of the hazard against the usual, above 0
     */
    public LifeRecords withHazards(double[] multipliers) {
        if (multipliers.length != exits.length) {
            throw new IllegalArgumentException(
                    "columns differ in length: exits " + exits.length + ", hazards " + multipliers.length);
        }
        return new LifeRecords(entries, exits, events, counts, shares, multipliers.clone());
    }

    /** How many times the usual hazard a row has; 1 unless it is known to differ. */
    double hazard(int row) {
        return hazards == null ? 1 : hazards[row];
    }

    /** How much of a failure the row counts as: 1 unless it is only believed with a chance; 0 where it did not fail. */
    double eventShare(int row) {
        return !events[row] ? 0 : shares == null ? 1 : shares[row];
    }

    /** Units that failed, each as far as it is believed to have. */
    public double believedEvents() {
        double sum = 0;
        for (int row = 0; row < exits.length; row++) {
            sum += eventShare(row) * count(row);
        }
        return sum;
    }

    /** Number of rows; each may stand for several units. */
    public int size() {
        return exits.length;
    }

    /** Age from which a row is seen, km or hours, at least 0; {@code row} is 0 to size - 1. */
    public double entry(int row) {
        return entries == null ? 0 : entries[row];
    }

    /** Age at which a row ends, above its entry, in the same unit. */
    public double exit(int row) {
        return exits[row];
    }

    /** Whether a row ends with a failure. */
    public boolean isEvent(int row) {
        return events[row];
    }

    /** How many units a row stands for, at least 1. */
    public long count(int row) {
        return counts == null ? 1 : counts[row];
    }

    /** Units that failed. */
    public long eventCount() {
        return eventCount;
    }

    /** Units last seen alive. */
    public long suspensionCount() {
        return totalCount - eventCount;
    }

    /** True where some unit came under observation after age 0. */
    public boolean hasDelayedEntry() {
        return entries != null;
    }

    /** Whether rows weigh differently in sums of hazards. */
    boolean hasWeights() {
        return counts != null || hazards != null;
    }

    double largestExit() {
        return Arrays.stream(exits).max().orElse(0);
    }
}
