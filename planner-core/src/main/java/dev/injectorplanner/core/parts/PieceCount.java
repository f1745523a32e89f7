package dev.injectorplanner.core.parts;

import java.util.Arrays;

/**
 * How many of independent pieces with unequal chances are needed, grown piece by piece: the exact Poisson-binomial
 * distribution by convolution. Terms only grow by sums of products of positive numbers, so nothing cancels.
 */
final class PieceCount {
    private static final double NOTHING = 1e-40;

    private double[] chances = {1, 0, 0, 0};
    private int most;
    private int pieces;

    void add(double chance) {
        if (most + 2 > chances.length) {
            chances = Arrays.copyOf(chances, 2 * chances.length);
        }
        chances[most + 1] = chances[most] * chance;
        for (int k = most; k > 0; k--) {
            chances[k] = chances[k] * (1 - chance) + chances[k - 1] * chance;
        }
        chances[0] *= 1 - chance;
        pieces++;
        if (chances[most + 1] > NOTHING) {
            most++;
        } else {
            chances[most + 1] = 0;
        }
    }

    int pieces() {
        return pieces;
    }

    /** Chance of each count, 0 to the largest with a chance worth a number. */
    double[] toArray() {
        return Arrays.copyOf(chances, most + 1);
    }

    double chanceOfAtMost(double count) {
        double sum = 0;
        for (int k = 0; k <= most && k <= count; k++) {
            sum += chances[k];
        }
        return Math.min(1, sum);
    }

    /** The smallest count that suffices with at least a chance. */
    int quantile(double level) {
        double sum = 0;
        for (int k = 0; k < most; k++) {
            sum += chances[k];
            if (sum >= level) {
                return k;
            }
        }
        return most;
    }
}
