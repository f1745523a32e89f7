package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * The problem without its links between weeks: each cell picks its own best set at the reduced costs that the
 * multipliers give. Whatever the multipliers, the sum is a lower bound of every schedule's cost (Lagrangian relaxation;
 * Geoffrion, 1974).
 */
final class Relaxation {
    private final Problem problem;
    private final Workers workers;
    private final int[] weights;
    private final WeekKnapsack[] knapsacks;
    private final CellState[] states;
    private final WeekKnapsack.Room[] rooms;
    private final boolean[] closed;
    private final double[] reduced;
    private final double[] values;

    /** @param weights hours of the options in units: rounded down for a bound, up for sets that fit */
    Relaxation(Problem problem, Workers workers, int[] weights) {
        this.problem = problem;
        this.workers = workers;
        this.weights = weights;
        this.knapsacks = new WeekKnapsack[workers.count()];
        Arrays.setAll(knapsacks, worker -> new WeekKnapsack(problem));
        this.states = new CellState[problem.cells.length];
        Arrays.setAll(states, cell -> new CellState());
        boolean[] all = new boolean[problem.truckCount()];
        Arrays.fill(all, true);
        this.rooms = new WeekKnapsack.Room[problem.cells.length];
        Arrays.setAll(rooms, cell -> new WeekKnapsack.Room(all, 0));
        this.closed = new boolean[problem.cells.length];
        this.reduced = new double[problem.options.length];
        this.values = new double[problem.cells.length];
    }

    /** From now on only this part counts. */
    void restrict(Scope scope) {
        for (int cell = 0; cell < rooms.length; cell++) {
            rooms[cell] = new WeekKnapsack.Room(scope.mayCome(), scope.usedUnits()[cell]);
            closed[cell] = scope.closed()[cell];
        }
    }

    /** Starts afresh, so that what comes does not depend on what was. */
    void forget() {
        Arrays.setAll(states, cell -> new CellState());
    }

    /** Sum of the cells' best sets; {@link #pattern} then tells them. */
    double solve(Multipliers at) {
        for (int o = 0; o < reduced.length; o++) {
            double dayPrice =
                    at.bay()[problem.cellOf[o]] + (problem.groupOf[o] < 0 ? 0 : at.group()[problem.groupOf[o]]);
            reduced[o] = problem.cost[o] + at.truck()[problem.truckOf[o]] + dayPrice * problem.days[o];
        }
        workers.forEach(states.length, (cell, worker) -> {
            if (closed[cell]) {
                states[cell].pattern = new int[0];
                values[cell] = 0;
            } else {
                values[cell] = knapsacks[worker].solve(cell, reduced, weights, rooms[cell], states[cell]);
            }
        });
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    int[] pattern(int cell) {
        return states[cell].pattern;
    }

    /** What a unit of hours is worth in each cell, as of the last {@link #solve}. */
    double[] prices() {
        return Arrays.stream(states).mapToDouble(state -> state.price).toArray();
    }

    double reduced(int option) {
        return reduced[option];
    }

    long work() {
        long sum = 0;
        for (WeekKnapsack knapsack : knapsacks) {
            sum += knapsack.work();
        }
        return sum;
    }
}
