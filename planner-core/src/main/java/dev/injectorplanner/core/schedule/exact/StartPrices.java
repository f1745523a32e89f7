package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * First multipliers: a price per unit for every cell, raised where more is asked for than there is and lowered where
 * less, while every truck goes where it gains most; what it gains is its multiplier.
 */
final class StartPrices {
    private static final int ROUNDS = 200;

    private StartPrices() {}

    static Multipliers of(Problem problem) {
        double[] price = new double[problem.cells.length];
        double[] gain = new double[problem.truckCount()];
        Arrays.fill(price, startPrice(problem));
        double[] mean = new double[price.length];
        double step = 0.2 * startPrice(problem);
        for (int round = 0; round < ROUNDS; round++) {
            double[] demand = demand(problem, price, gain);
            for (int c = 0; c < price.length; c++) {
                double there = Math.max(1, problem.cells[c].units());
                double share = Math.max(-1, Math.min(1, (demand[c] - there) / there));
                price[c] = Math.max(0, price[c] + step * share);
                mean[c] += price[c] / ROUNDS * (round >= ROUNDS / 2 ? 2 : 0);
            }
            step *= 0.98;
        }
        demand(problem, mean, gain);
        Multipliers start = Multipliers.none(problem);
        System.arraycopy(gain, 0, start.truck(), 0, gain.length);
        return start;
    }

    private static double startPrice(Problem problem) {
        double sum = 0;
        long n = 0;
        for (int o = 0; o < problem.options.length; o++) {
            sum += Math.max(0, -problem.cost[o]) / Math.max(1, problem.low[o]);
            n++;
        }
        return n == 0 ? 0 : sum / n;
    }

    private static double[] demand(Problem problem, double[] price, double[] gain) {
        double[] demand = new double[price.length];
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
        }
        return demand;
    }
}
