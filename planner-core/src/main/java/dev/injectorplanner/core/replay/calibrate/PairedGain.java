package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.replay.run.Ledger;
import java.util.List;

/**
 * Cost per 1,000 km of one way over another, fleet by fleet on the same draws.
 *
 * @param difference mean over the fleets, below 0 where the first is cheaper
 * @param error its standard error
 */
record PairedGain(double difference, double error) {
    static PairedGain of(List<Ledger> fleets, List<Ledger> against) {
        double[] differences = new double[fleets.size()];
        double sum = 0;
        for (int fleet = 0; fleet < differences.length; fleet++) {
            differences[fleet] = rate(fleets.get(fleet)) - rate(against.get(fleet));
            sum += differences[fleet];
        }
        double mean = sum / differences.length;
        double squares = 0;
        for (double difference : differences) {
            squares += (difference - mean) * (difference - mean);
        }
        double error = Math.sqrt(squares / (differences.length - 1) / differences.length);
        return new PairedGain(mean, error);
    }

    private static double rate(Ledger ledger) {
        return 1_000 * ledger.cost() / ledger.km;
    }

    /** Cheaper by more than so many standard errors. */
    boolean isSure(double errors) {
        return difference < -errors * error;
    }
}
