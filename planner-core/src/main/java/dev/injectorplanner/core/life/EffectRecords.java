package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.InvalidValueException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Stretches of life with covariates that hold during them (counting-process form): a unit whose condition changes has
 * several rows, each from {@code start} (not included) to {@code stop} (included), the event flag only on the last.
 */
public final class EffectRecords {
    private final double @Nullable [] starts;
    private final double[] stops;
    private final boolean[] events;
    private final String @Nullable [] ids;
    private final List<String> names;
    private final double[][] covariates;

    private EffectRecords(
            double @Nullable [] starts,
            double[] stops,
            boolean[] events,
            String @Nullable [] ids,
            List<String> names,
            double[][] covariates) {
        this.starts = starts;
        this.stops = stops;
        this.events = events;
        this.ids = ids;
        this.names = names;
        this.covariates = covariates;
    }

    /**
     * Rows as columns; every column is copied.
     *
     * @param starts null for all 0
     * @param stops above the start
     * @param events true where the stretch ends with a failure
     * @param ids which unit each row belongs to; null where not known, then there are no robust errors
     * @param names of the covariates
     * @param covariates values [covariate][row], finite
     * @throws InvalidValueException if a value is out of its range; its field names the row, counted from 1
     */
    public static EffectRecords of(
            double @Nullable [] starts,
            double[] stops,
            boolean[] events,
            String @Nullable [] ids,
            List<String> names,
            double[][] covariates) {
        double[][] columns = new double[covariates.length][];
        for (int j = 0; j < covariates.length; j++) {
            columns[j] = covariates[j].clone();
            guardColumn(names.get(j), columns[j], stops.length);
        }
        for (int i = 0; i < stops.length; i++) {
            double start = starts == null ? 0 : starts[i];
            if (!(start >= 0 && start < stops[i] && Double.isFinite(stops[i]))) {
                throw new InvalidValueException(
                        "stop of row " + (i + 1),
                        stops[i],
                        "must lie above the start " + start + ", which must be zero or more",
                        "correct start or stop");
            }
        }
        return new EffectRecords(
                starts == null ? null : starts.clone(),
                stops.clone(),
                events.clone(),
                ids == null ? null : ids.clone(),
                List.copyOf(names),
                columns);
    }

    private static void guardColumn(String name, double[] column, int rows) {
        if (column.length != rows) {
            throw new IllegalArgumentException(name + " has " + column.length + " values for " + rows + " rows");
        }
        for (int i = 0; i < rows; i++) {
            if (!Double.isFinite(column[i])) {
                throw new InvalidValueException(
                        name + " of row " + (i + 1), column[i], "is not a number", "enter a number");
            }
        }
    }

    /** Number of rows. */
    public int size() {
        return stops.length;
    }

    /** The covariates' names, in the order of the coefficients. */
    public List<String> names() {
        return names;
    }

    /** Where a row begins to be seen, in the unit of its ages; 0 where none was given. {@code row} is 0 to size - 1. */
    public double start(int row) {
        return starts == null ? 0 : starts[row];
    }

    /** Where a row ends, after its start, in the same unit. */
    public double stop(int row) {
        return stops[row];
    }

    /** Whether a row ends with a failure. */
    public boolean isEvent(int row) {
        return events[row];
    }

    /** A covariate by its place among the names, finite, in the unit it was given in. */
    public double covariate(int covariate, int row) {
        return covariates[covariate][row];
    }

    /** Which unit each row belongs to, counted from 0 in order of first appearance; null where ids are not known. */
    int @Nullable [] units() {
        if (ids == null) {
            return null;
        }
        Map<String, Integer> seen = new HashMap<>();
        int[] units = new int[ids.length];
        for (int i = 0; i < ids.length; i++) {
            units[i] = seen.computeIfAbsent(ids[i], id -> seen.size());
        }
        return units;
    }

    double[] stopColumn() {
        return stops.clone();
    }

    double[] startColumn() {
        return starts == null ? new double[stops.length] : starts.clone();
    }
}
