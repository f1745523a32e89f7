package dev.injectorplanner.core.replay;

import dev.injectorplanner.core.replay.run.Ledger;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Cost per 1,000 km of one policy over another, fleet by fleet on the same draws.
 *
 * @param difference mean over the fleets, below 0 where the first is cheaper
 * @param error its standard error; 0 for a single fleet, of which nothing can be said
 * @param fleets how many
 */
public record PairedGain(double difference, double error, int fleets) {
    private static final double UPPER = 0.975;

    /** @param against ledgers of the same fleets, in the same order */
    public static PairedGain of(List<Ledger> ledgers, List<Ledger> against) {
        int n = ledgers.size();
        double[] differences = new double[n];
        double sum = 0;
        for (int fleet = 0; fleet < n; fleet++) {
            differences[fleet] =
                    ledgers.get(fleet).costPer1000Km() - against.get(fleet).costPer1000Km();
            sum += differences[fleet];
        }
        double mean = sum / n;
        double squares = 0;
        for (double difference : differences) {
            squares += (difference - mean) * (difference - mean);
        }
        return new PairedGain(mean, n < 2 ? 0 : Math.sqrt(squares / (n - 1) / n), n);
    }

    /** Half of Student's 95 % interval. */
    double halfWidth() {
        return fleets < 2 ? 0 : error * new TDistribution(fleets - 1.0).inverseCumulativeProbability(UPPER);
    }

    /** Cheaper by more than a number of standard errors. */
    public boolean isSure(double errors) {
        return difference < -errors * error;
    }
}
