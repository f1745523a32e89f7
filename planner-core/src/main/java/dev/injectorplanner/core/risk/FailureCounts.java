package dev.injectorplanner.core.risk;

import java.util.Arrays;

/**
 * The number of failures among injectors of one life: for each pair of shape and scale a Poisson-binomial count, exact by
 * convolution one injector at a time; mixed by the weights of the pairs, since a wrong life is wrong for all of them at once.
 */
final class FailureCounts {

    private final double[] weights;
    private final double[][] counts;

    /** @param weights of the pairs, together 1 */
    FailureCounts(double[] weights) {
        this.weights = weights.clone();
        this.counts = new double[weights.length][];
        for (int pair = 0; pair < counts.length; pair++) {
            counts[pair] = new double[] {1};
        }
    }

    /** Adds an injector that fails with these chances, one a pair. */
    void add(double[] chances) {
        for (int pair = 0; pair < counts.length; pair++) {
            counts[pair] = convolved(counts[pair], chances[pair]);
        }
    }

    private static double[] convolved(double[] counts, double chance) {
        double last = counts[counts.length - 1];
        boolean grows = last * chance > 1e-14;
        double[] next = Arrays.copyOf(counts, counts.length + (grows ? 1 : 0));
        for (int k = next.length - 1; k > 0; k--) {
            double here = k < counts.length ? counts[k] : 0;
            next[k] = here * (1 - chance) + counts[k - 1] * chance;
        }
        next[0] = counts[0] * (1 - chance);
        return next;
    }

    /** Chances of 0, 1, 2 and so on failures. */
    double[] mixed() {
        int most = Arrays.stream(counts).mapToInt(each -> each.length).max().orElse(1);
        double[] mixed = new double[most];
        for (int pair = 0; pair < counts.length; pair++) {
            for (int k = 0; k < counts[pair].length; k++) {
                mixed[k] += weights[pair] * counts[pair][k];
            }
        }
        return mixed;
    }

    /** Chances of the sum of two independent counts. */
    static double[] sum(double[] one, double[] other) {
        double[] sum = new double[one.length + other.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length && one[i] > 0; j++) {
                sum[i + j] += one[i] * other[j];
            }
        }
        return sum;
    }

    static double mean(double[] counts) {
        double mean = 0;
        for (int k = 0; k < counts.length; k++) {
            mean += k * counts[k];
        }
        return mean;
    }

    /** The least count that is not passed with this chance. */
    static int quantile(double[] counts, double chance) {
        double sum = 0;
        for (int k = 0; k < counts.length; k++) {
            sum += counts[k];
            if (sum >= chance - 1e-12) {
                return k;
            }
        }
        return counts.length - 1;
    }
}
