package dev.injectorplanner.core.schedule.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Builds a schedule cell by cell: the cell whose best set shares fewest trucks with other cells' best sets is fixed, its
 * trucks leave the others, the multipliers are tuned a little, and so on.
 */
final class Dive {
    private static final int SHARE = 24;

    private final Problem problem;
    private final Relaxation relaxation;

    /** @param relaxation one of rounded-up hours, used by nobody else meanwhile */
    Dive(Problem problem, Relaxation relaxation) {
        this.problem = problem;
        this.relaxation = relaxation;
    }

    /**
     * Fills open cells.
     *
     * @param start what is fixed; left as it is
     * @param open cells to fill
     * @param mayCome trucks to fill them with
     * @param from multipliers to begin with
     * @param steps how often to tune them before each fixing
     * @param random breaks ties
     */
    Assignment fill(Assignment start, boolean[] open, boolean[] mayCome, Multipliers from, int steps, Random random) {
        Assignment built = start.copy();
        boolean[] trucks = mayCome.clone();
        boolean[] closed = new boolean[open.length];
        int left = 0;
        for (int cell = 0; cell < open.length; cell++) {
            closed[cell] = !open[cell];
            left += open[cell] ? 1 : 0;
        }
        Multipliers at = from;
        while (left > 0) {
            BoundSearch search = new BoundSearch(problem, relaxation, Scope.around(problem, built, trucks, closed), at);
            search.run(steps, Double.NEGATIVE_INFINITY);
            at = search.best();
            List<Integer> order = leastSharedFirst(closed, random);
            for (int cell : order.subList(0, Math.max(1, left / SHARE))) {
                fix(built, cell, trucks);
                closed[cell] = true;
                left--;
            }
        }
        built.fill();
        return built;
    }

    private List<Integer> leastSharedFirst(boolean[] closed, Random random) {
        int[] uses = new int[problem.truckCount()];
        for (int cell = 0; cell < closed.length; cell++) {
            for (int option : relaxation.pattern(cell)) {
                uses[problem.truckOf[option]]++;
            }
        }
        double[] shared = new double[closed.length];
        List<Integer> order = new ArrayList<>();
        for (int cell = 0; cell < closed.length; cell++) {
            if (closed[cell]) {
                continue;
            }
            shared[cell] = 0.9 * random.nextDouble();
            for (int option : relaxation.pattern(cell)) {
                shared[cell] += uses[problem.truckOf[option]] - 1;
            }
            order.add(cell);
        }
        order.sort((one, other) -> Double.compare(shared[one], shared[other]));
        return order;
    }

    /** Takes the cell's best set, the most worth first where bays or duty groups do not hold all of it. */
    private void fix(Assignment built, int cell, boolean[] trucks) {
        List<Integer> set = new ArrayList<>();
        for (int option : relaxation.pattern(cell)) {
            set.add(option);
        }
        set.sort((one, other) -> Double.compare(relaxation.reduced(one), relaxation.reduced(other)));
        for (int option : set) {
            if (built.fits(option)) {
                built.take(option);
                trucks[problem.truckOf[option]] = false;
            }
        }
    }
}
