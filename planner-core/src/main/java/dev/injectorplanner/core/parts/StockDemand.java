package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What visits together take of one part: what is certain, and what breaks by its chance. Each piece breaks or not by
 * itself; where a quantity is no whole number, it is taken or not as a whole. Pieces of unequal size are covered size by
 * size.
 */
final class StockDemand {
    /** Beyond this many pieces that may break an approximation stands in. */
    static final int EXACT_PIECES = 4_000;

    private double certain;
    private double expected;
    private final Map<Double, Sized> bySize = new TreeMap<>();

    private static final class Sized {
        private final PieceCount exact = new PieceCount();
        private final List<Double> chances = new ArrayList<>();

        void add(double chance) {
            chances.add(chance);
            if (chances.size() <= EXACT_PIECES) {
                exact.add(chance);
            }
        }

        int required(double level) {
            return chances.size() <= EXACT_PIECES
                    ? exact.quantile(level)
                    : approximate().smallestStock(level);
        }

        double chanceAbove(double count) {
            double atMost = chances.size() <= EXACT_PIECES
                    ? exact.chanceOfAtMost(count)
                    : approximate().chanceOfAtMost((int) count);
            return 1 - atMost;
        }

        private Demand approximate() {
            return Demand.approximate(
                    chances.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    /** Adds this many times a quantity, each with a chance. */
    void add(long times, double quantity, double chance) {
        expected += times * quantity * chance;
        if (chance >= 1) {
            certain += times * quantity;
            return;
        }
        boolean whole = quantity == Math.rint(quantity);
        long trials = whole ? Math.round(times * quantity) : times;
        for (long i = 0; i < trials && chance > 0; i++) {
            bySize.computeIfAbsent(whole ? 1.0 : quantity, size -> new Sized()).add(chance);
        }
    }

    /** Pieces it takes on average. */
    double expected() {
        return Figures.tidy(expected);
    }

    /** Pieces that suffice with a chance of at least {@code level}. */
    double required(double level) {
        double sum = certain;
        for (Map.Entry<Double, Sized> sized : bySize.entrySet()) {
            sum += sized.getKey() * sized.getValue().required(level);
        }
        return Figures.tidy(sum);
    }

    /** Chance that this many pieces do not suffice; where sizes differ, of the most pressing size. */
    double chanceAbove(double pieces, double level) {
        if (certain > pieces + 1e-9) {
            return 1;
        }
        double most = 0;
        double required = required(level);
        for (Map.Entry<Double, Sized> sized : bySize.entrySet()) {
            double others = required - sized.getKey() * sized.getValue().required(level);
            most = Math.max(most, sized.getValue().chanceAbove(Math.floor((pieces - others) / sized.getKey() + 1e-9)));
        }
        return most;
    }
}
