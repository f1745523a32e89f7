package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * First multipliers: prices per unit of hours for every cell at which demand and supply of the linear relaxation nearly
 * meet, while every truck goes where it gains most; what it gains is its multiplier.
 */
final class StartPrices {
    private static final int ROUNDS = 2_000;
    private static final double AIM = 0.02;
    private static final double MEMORY = 0.2;
    private static final int PATIENCE = 10;
    private static final double SHORTEN = 0.7;

    private final Problem problem;
    private final double[] gain;
    private final double[] demand;

    private StartPrices(Problem problem) {
        this.problem = problem;
        this.gain = new double[problem.truckCount()];
        this.demand = new double[problem.cells.length];
    }

    static Multipliers of(Problem problem) {
        StartPrices search = new StartPrices(problem);
        search.value(search.bestPrices());
        return new Multipliers(search.gain, new double[problem.cells.length], new double[problem.groupDays.length]);
    }

    private double[] bestPrices() {
        double[] best = new double[problem.cells.length];
        Arrays.fill(best, meanWorth());
        double most = value(best);
        double[] mean = excess(best);
        double factor = 1;
        int failures = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double norm = Arrays.stream(mean).map(x -> x * x).sum();
            double step = norm == 0 ? 0 : factor * AIM * Math.abs(most) / norm;
            double[] next = new double[best.length];
            for (int cell = 0; cell < next.length; cell++) {
                next[cell] = Math.max(0, best[cell] + step * mean[cell]);
            }
            double value = value(next);
            double[] excess = excess(next);
            for (int cell = 0; cell < next.length; cell++) {
                mean[cell] += MEMORY * (excess[cell] - mean[cell]);
            }
            if (value > most) {
                most = value;
                best = next;
                failures = 0;
            } else if (++failures % PATIENCE == 0) {
                factor *= SHORTEN;
            }
        }
        return best;
    }

    private double meanWorth() {
        double sum = 0;
        for (int o = 0; o < problem.options.length; o++) {
            sum += Math.max(0, -problem.cost[o]) / Math.max(1, problem.low[o]);
        }
        return sum / Math.max(1, problem.options.length);
    }

    /** The relaxation's value at these prices; leaves gains and demand behind. */
    private double value(double[] price) {
        Arrays.fill(demand, 0);
        double sum = 0;
        for (int t = 0; t < gain.length; t++) {
            double best = problem.must[t] ? Double.POSITIVE_INFINITY : 0;
            int chosen = -1;
            for (int o = problem.first[t]; o < problem.first[t + 1]; o++) {
                double value = problem.cost[o] + price[problem.cellOf[o]] * problem.low[o];
                if (value < best) {
                    best = value;
                    chosen = o;
                }
            }
            if (chosen >= 0) {
                demand[problem.cellOf[chosen]] += problem.low[chosen];
            }
            gain[t] = chosen < 0 ? 0 : -best;
            sum -= gain[t];
        }
        for (int cell = 0; cell < price.length; cell++) {
            sum -= problem.cells[cell].worthAt(price[cell]);
        }
        return sum;
    }

    private double[] excess(double[] price) {
        double[] excess = new double[price.length];
        for (int cell = 0; cell < price.length; cell++) {
            Cell there = problem.cells[cell];
            boolean dear = price[cell] > there.capacity().overtimePremium() * there.hoursPerUnit();
            excess[cell] = demand[cell] - (dear ? there.units() : there.plainUnits());
        }
        return excess;
    }
}
