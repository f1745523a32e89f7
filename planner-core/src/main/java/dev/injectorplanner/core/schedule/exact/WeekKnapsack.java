package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * The best set of visits of one cell when every option has a reduced cost of its own: a multiple-choice knapsack, solved
 * exactly by dynamic programming over units of hours, overtime as dearer hours at its end. Options that a price per unit
 * proves to be in no best set are left out before.
 *
 * <p>Reduced costs are rounded down to whole numbers of a fine scale, so that the answer is never above the true best.
 * One object serves one thread.
 */
final class WeekKnapsack {
    private static final int SCREEN_WORK = 60;
    private static final double RANGE = 1 << 29;

    /** What is left of a cell: who may come and how many units are taken already. */
    record Room(boolean[] mayCome, int usedUnits) {}

    private final Problem problem;
    private int[][] layers = new int[0][0];
    private int[] kept = new int[0];
    private long work;

    WeekKnapsack(Problem problem) {
        this.problem = problem;
    }

    /** Dynamic programming steps done so far. */
    long work() {
        return work;
    }

    /**
     * Solves a cell.
     *
     * @param cell which
     * @param reduced reduced cost of every option of the problem
     * @param weights hours of every option in units
     * @param room what is left of the cell
     * @param state prices and the last pattern of the cell; brought up to date
     * @return a lower bound of the best sum of reduced costs and overtime, equal to it but for rounding
     */
    double solve(int cell, double[] reduced, int[] weights, Room room, CellState state) {
        Cell there = problem.cells[cell];
        int capacity = there.units() - room.usedUnits();
        if (capacity < 0) {
            state.pattern = new int[0];
            return 0;
        }
        PriceScreen screen = new PriceScreen(problem, there, reduced, weights, room);
        int count = screen.keep(problem.ofCell[cell], state, keptFor(problem.ofCell[cell].length));
        work += SCREEN_WORK * problem.ofCell[cell].length;
        return programme(there, reduced, weights, room, state, count);
    }

    private int[] keptFor(int length) {
        if (kept.length < length) {
            kept = new int[length];
        }
        return kept;
    }

    private double programme(Cell there, double[] reduced, int[] weights, Room room, CellState state, int count) {
        int capacity = there.units() - room.usedUnits();
        double scale = scale(reduced, weights, capacity, count);
        int[] last = layer(0, capacity);
        Arrays.fill(last, 0, capacity + 1, 0);
        int depth = 0;
        int[] starts = state.starts(count + 1);
        for (int from = 0; from < count; ) {
            int to = from + 1;
            while (to < count && problem.truckOf[kept[to]] == problem.truckOf[kept[from]]) {
                to++;
            }
            starts[depth++] = from;
            int[] next = layer(depth, capacity);
            System.arraycopy(last, 0, next, 0, capacity + 1);
            for (int i = from; i < to; i++) {
                relax(last, next, weights[kept[i]], (int) Math.floor(reduced[kept[i]] * scale), capacity);
            }
            work += (to - from + 1) * (capacity + 1L);
            last = next;
            from = to;
        }
        starts[depth] = count;
        int best = bestFill(there, last, capacity, room.usedUnits(), scale);
        state.pattern = pattern(reduced, weights, scale, best, depth, starts);
        return last[best] / scale + there.overtimeCost(best + room.usedUnits()) - there.overtimeCost(room.usedUnits());
    }

    private static void relax(int[] last, int[] next, int weight, int value, int capacity) {
        int n = capacity + 1 - weight;
        for (int c = 0; c < n; c++) {
            next[c + weight] = Math.min(next[c + weight], last[c] + value);
        }
    }

    private static int bestFill(Cell there, int[] sums, int capacity, int used, double scale) {
        int best = Math.min(capacity, Math.max(0, there.plainUnits() - used));
        double least = sums[best] / scale + there.overtimeCost(best + used);
        for (int c = best + 1; c <= capacity; c++) {
            double value = sums[c] / scale + there.overtimeCost(c + used);
            if (value < least) {
                least = value;
                best = c;
            }
        }
        return best;
    }

    private int[] pattern(double[] reduced, int[] weights, double scale, int fill, int depth, int[] starts) {
        int[] chosen = new int[depth];
        int n = 0;
        int c = fill;
        for (int d = depth; d > 0; d--) {
            if (layers[d][c] == layers[d - 1][c]) {
                continue;
            }
            for (int i = starts[d - 1]; i < starts[d]; i++) {
                int before = c - weights[kept[i]];
                int value = (int) Math.floor(reduced[kept[i]] * scale);
                if (before >= 0 && layers[d - 1][before] + value == layers[d][c]) {
                    chosen[n++] = kept[i];
                    c = before;
                    break;
                }
            }
        }
        return Arrays.copyOf(chosen, n);
    }

    private double scale(double[] reduced, int[] weights, int capacity, int count) {
        double most = 1e-6;
        int lightest = Integer.MAX_VALUE;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, Math.abs(reduced[kept[i]]));
            lightest = Math.min(lightest, weights[kept[i]]);
        }
        double fit = lightest == 0 ? count : Math.min(count, capacity / (double) lightest + 1);
        return RANGE / (most * Math.max(1, fit));
    }

    private int[] layer(int depth, int capacity) {
        if (depth >= layers.length) {
            layers = Arrays.copyOf(layers, Math.max(depth + 1, 2 * layers.length));
        }
        if (layers[depth] == null || layers[depth].length <= capacity) {
            layers[depth] = new int[capacity + 1];
        }
        return layers[depth];
    }
}
