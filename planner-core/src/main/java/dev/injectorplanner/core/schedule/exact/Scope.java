package dev.injectorplanner.core.schedule.exact;

import java.util.Arrays;

/**
 * What part of the problem is open: which trucks may come, which cells are closed, and what is left of the limits.
 *
 * @param mayCome trucks that may be given an option
 * @param closed cells that take no more
 * @param usedUnits units taken in each cell
 * @param bayDays bay-days left in each cell
 * @param groupDays truck-days left in each duty group and week
 */
record Scope(boolean[] mayCome, boolean[] closed, int[] usedUnits, double[] bayDays, double[] groupDays) {
    private static final int NO_END = 1 << 28;

    /** Everything is open. */
    static Scope whole(Problem problem) {
        boolean[] all = new boolean[problem.truckCount()];
        Arrays.fill(all, true);
        return around(problem, new Assignment(problem), all, new boolean[problem.cells.length]);
    }

    /** Duty groups alone: depots have hours and bays without end. */
    static Scope withoutDepots(Problem problem) {
        Scope whole = whole(problem);
        int[] used = new int[problem.cells.length];
        Arrays.fill(used, -NO_END);
        double[] bays = new double[problem.cells.length];
        Arrays.fill(bays, Double.POSITIVE_INFINITY);
        return new Scope(whole.mayCome(), whole.closed(), used, bays, whole.groupDays());
    }

    /** What an assignment leaves. */
    static Scope around(Problem problem, Assignment fixed, boolean[] mayCome, boolean[] closed) {
        double[] bays = new double[problem.cells.length];
        Arrays.setAll(bays, cell -> Math.max(0, problem.cells[cell].capacity().bayDays() - fixed.bayDays(cell)));
        double[] groups = new double[problem.groupDays.length];
        Arrays.setAll(groups, group -> Math.max(0, problem.groupDays[group] - fixed.groupDays(group)));
        return new Scope(mayCome, closed, fixed.units(), bays, groups);
    }

    boolean mustCome(Problem problem, int truck) {
        return problem.must[truck] && mayCome[truck];
    }
}
