package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * Leaves out the options of a cell that are in no best set. At a price per unit the best set can be no better than the
 * sum of the trucks' best priced options less what the capacity is worth; an option whose forced choice lifts that
 * above a set already known is out.
 */
final class PriceScreen {
    private static final int STEPS = 12;
    private static final double SLACK = 1e-6;

    private final Problem problem;
    private final Cell cell;
    private final double[] reduced;
    private final int[] weights;
    private final WeekKnapsack.Room room;
    private int[] candidates = new int[0];
    private int count;

    PriceScreen(Problem problem, Cell cell, double[] reduced, int[] weights, WeekKnapsack.Room room) {
        this.problem = problem;
        this.cell = cell;
        this.reduced = reduced;
        this.weights = weights;
        this.room = room;
    }

    /** Writes the options that may be in a best set into {@code kept} and says how many they are. */
    int keep(int[] offered, CellState state, int[] kept) {
        int capacity = cell.units() - room.usedUnits();
        candidates = new int[offered.length];
        double steepest = 0;
        for (int option : offered) {
            if (reduced[option] < 0 && weights[option] <= capacity && room.mayCome()[problem.truckOf[option]]) {
                candidates[count++] = option;
                steepest = Math.max(steepest, -reduced[option] / Math.max(1, weights[option]));
            }
        }
        state.price = bestPrice(steepest);
        double known = Math.min(valueOf(state.pattern), greedy(state.price));
        return screen(state.price, known, kept);
    }

    private int screen(double price, double known, int[] kept) {
        double least = sumAt(price);
        double allowed = known - least + SLACK * (1 + Math.abs(known));
        int n = 0;
        for (int from = 0; from < count; ) {
            int to = end(from);
            double own = Math.min(0, bestOf(from, to, price));
            for (int i = from; i < to; i++) {
                if (priced(candidates[i], price) - own <= allowed) {
                    kept[n++] = candidates[i];
                }
            }
            from = to;
        }
        return n;
    }

    private double bestPrice(double steepest) {
        double low = 0;
        double high = steepest;
        for (int step = 0; step < STEPS; step++) {
            double middle = (low + high) / 2;
            if (demandAt(middle) > supplyAt(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return sumAt(low) > sumAt(high) ? low : high;
    }

    private double supplyAt(double price) {
        double dear = cell.capacity().overtimePremium() * cell.hoursPerUnit();
        int units = price <= dear ? Math.max(cell.plainUnits(), room.usedUnits()) : cell.units();
        return units - room.usedUnits();
    }

    private double demandAt(double price) {
        double demand = 0;
        for (int from = 0; from < count; ) {
            int to = end(from);
            double best = 0;
            int weight = 0;
            for (int i = from; i < to; i++) {
                double value = priced(candidates[i], price);
                if (value < best) {
                    best = value;
                    weight = weights[candidates[i]];
                }
            }
            demand += weight;
            from = to;
        }
        return demand;
    }

    /** A lower bound of the best set's value. */
    private double sumAt(double price) {
        double sum = price * room.usedUnits() - cell.worthAt(price) - cell.overtimeCost(room.usedUnits());
        for (int from = 0; from < count; ) {
            int to = end(from);
            sum += Math.min(0, bestOf(from, to, price));
            from = to;
        }
        return sum;
    }

    private double bestOf(int from, int to, double price) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            best = Math.min(best, priced(candidates[i], price));
        }
        return best;
    }

    private double priced(int option, double price) {
        return reduced[option] + price * weights[option];
    }

    private int end(int from) {
        int truck = problem.truckOf[candidates[from]];
        int to = from + 1;
        while (to < count && problem.truckOf[candidates[to]] == truck) {
            to++;
        }
        return to;
    }

    /** A set that takes each truck's best priced option, the best first, as long as hours last. */
    private double greedy(double price) {
        long[] order = new long[count];
        int n = 0;
        for (int from = 0; from < count; ) {
            int to = end(from);
            int best = from;
            for (int i = from + 1; i < to; i++) {
                best = priced(candidates[i], price) < priced(candidates[best], price) ? i : best;
            }
            double value = priced(candidates[best], price);
            order[n++] = (sortable((float) value) << 32) | candidates[best];
            from = to;
        }
        Arrays.sort(order, 0, n);
        int used = room.usedUnits();
        double value = -cell.overtimeCost(used);
        for (int i = 0; i < n; i++) {
            int option = (int) order[i];
            int with = used + weights[option];
            double gain = with > cell.units() ? 0 : reduced[option] + cell.overtimeCost(with) - cell.overtimeCost(used);
            if (gain < 0) {
                value += reduced[option];
                used = with;
            }
        }
        return value + cell.overtimeCost(used);
    }

    /** Sorts as the number does. */
    private static long sortable(float value) {
        int bits = Float.floatToIntBits(value);
        return bits ^ ((bits >> 31) & Integer.MAX_VALUE);
    }

    private double valueOf(int[] pattern) {
        int used = room.usedUnits();
        double sum = -cell.overtimeCost(used);
        for (int option : pattern) {
            if (!room.mayCome()[problem.truckOf[option]]) {
                return 0;
            }
            sum += reduced[option];
            used += weights[option];
        }
        return used > cell.units() ? 0 : Math.min(0, sum + cell.overtimeCost(used));
    }
}
