package dev.injectorplanner.core.schedule.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * One attempt at a better schedule: some cells are emptied and replanned, by a dive or by the exact solver. Belongs
 * to one thread; what it answers depends only on what it is given.
 */
final class Improver {
    private static final int FEWEST_CELLS = 3;
    private static final int SIZES = 3;
    private static final int WIDE_SIZES = 7;
    private static final int DIVE_STEPS = 3;
    private static final double EXACT_WORK = 0.25;
    private static final double EXACT_UNITS = 2.5e9;
    private static final int MOST_OFFERED = 300;

    private final Problem problem;
    private final Neighbourhood neighbourhood;
    private final Relaxation relaxation;
    private final Dive dive;
    private long exactWork;

    Improver(Problem problem) {
        this.problem = problem;
        this.neighbourhood = new Neighbourhood(problem);
        this.relaxation = new Relaxation(problem, Workers.NONE, problem.high);
        this.dive = new Dive(problem, relaxation);
    }

    long work() {
        return relaxation.work() + exactWork;
    }

    /** A whole schedule around what is given. */
    Assignment whole(Assignment start, Multipliers at, int steps, long seed) {
        boolean[] open = new boolean[problem.cells.length];
        Arrays.fill(open, true);
        boolean[] mayCome = new boolean[problem.truckCount()];
        for (int truck = 0; truck < mayCome.length; truck++) {
            mayCome[truck] = start.choice(truck) == Assignment.NONE;
        }
        relaxation.forget();
        return dive.fill(start, open, mayCome, at, steps, new Random(seed));
    }

    /**
     * Plans some cells again with a dive; trucks that must come stay.
     *
     * @param wide whether more cells at once may be picked: slower, and finds what fewer cannot
     */
    Assignment byDive(Assignment now, Multipliers at, boolean wide, long seed) {
        Random random = new Random(seed);
        boolean[] open = neighbourhood.pick(FEWEST_CELLS + random.nextInt(wide ? WIDE_SIZES : SIZES), random);
        Assignment around = now.copy();
        boolean[] mayCome = empty(around, open, false);
        relaxation.forget();
        return dive.fill(around, open, mayCome, at, DIVE_STEPS, random);
    }

    /** Plans some cells again with the exact solver. */
    Assignment byExactPart(Assignment now, Multipliers at, double[] prices, long seed, double secondsLeft) {
        Random random = new Random(seed);
        boolean[] open = neighbourhood.pick(FEWEST_CELLS + random.nextInt(SIZES), random);
        Assignment around = now.copy();
        boolean[] mayCome = empty(around, open, true);
        int[] offered = promising(mayCome, open, at, prices, now);
        boolean[] closed = new boolean[open.length];
        for (int cell = 0; cell < open.length; cell++) {
            closed[cell] = !open[cell];
        }
        int[] chosen = now.chosenIn(open).stream().mapToInt(Integer::intValue).toArray();
        ExactPart.Answer answer = ExactPart.solve(
                problem,
                Scope.around(problem, around, mayCome, closed),
                offered,
                chosen,
                new ExactPart.Limits(EXACT_WORK, secondsLeft, 1, random.nextInt(1 << 20)));
        exactWork += (long) (answer.work() * EXACT_UNITS);
        for (int option : answer.found() ? answer.chosen() : chosen) {
            around.take(option);
        }
        around.fill();
        return around;
    }

    /** Takes the trucks out of the open cells, and says who may come into them. */
    private boolean[] empty(Assignment around, boolean[] open, boolean withThoseThatMust) {
        boolean[] mayCome = new boolean[problem.truckCount()];
        for (int truck = 0; truck < mayCome.length; truck++) {
            int option = around.choice(truck);
            boolean stays = problem.must[truck] && !withThoseThatMust;
            mayCome[truck] = option == Assignment.NONE || (open[problem.cellOf[option]] && !stays);
            if (mayCome[truck]) {
                around.drop(truck);
            }
        }
        return mayCome;
    }

    /** The options that look best at the bound's prices, and those chosen now. */
    private int[] promising(boolean[] mayCome, boolean[] open, Multipliers at, double[] prices, Assignment now) {
        List<Priced> priced = new ArrayList<>();
        for (int option = 0; option < problem.options.length; option++) {
            int truck = problem.truckOf[option];
            int cell = problem.cellOf[option];
            if (!mayCome[truck] || !open[cell]) {
                continue;
            }
            double days = at.bay()[cell] + (problem.groupOf[option] < 0 ? 0 : at.group()[problem.groupOf[option]]);
            double price = problem.cost[option]
                    + at.truck()[truck]
                    + prices[cell] * problem.high[option]
                    + days * problem.days[option];
            boolean keep = now.choice(truck) == option || problem.must[truck];
            priced.add(new Priced(option, keep ? Double.NEGATIVE_INFINITY : price));
        }
        return priced.stream()
                .sorted(Comparator.comparingDouble(Priced::price))
                .limit(MOST_OFFERED)
                .mapToInt(Priced::option)
                .sorted()
                .toArray();
    }

    private record Priced(int option, double price) {}
}
