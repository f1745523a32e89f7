package dev.injectorplanner.core.schedule.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import dev.injectorplanner.core.schedule.exact.CostScale.Scaled;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of the problem solved exactly, by the CP-SAT solver of OR-Tools, under a limit of work that is the same on
 * every machine.
 */
final class ExactPart {
    private static final double LEAST_SECONDS = 0.01;

    /**
     * How far it may go.
     *
     * @param work in the solver's own deterministic time
     * @param secondsLeft until the clock stops everything
     * @param workers simulated in one thread, or several; fixed for the same answer
     * @param seed where random choices start
     * @param enoughGap it stops when proven to be within this share of the best; 0 for the last digit
     */
    record Limits(double work, double secondsLeft, int workers, int seed, double enoughGap) {
        /** To the last digit. */
        Limits(double work, double secondsLeft, int workers, int seed) {
            this(work, secondsLeft, workers, seed, 0);
        }
    }

    /**
     * What it found.
     *
     * @param chosen options chosen
     * @param found whether a choice was found in time
     * @param bound lower bound of the sum of costs and of what overtime grows by; minus infinity where nothing is proven
     * @param best whether nothing is better
     * @param work what it took, in the solver's deterministic time
     */
    record Answer(int[] chosen, boolean found, double bound, boolean best, double work) {}

    private ExactPart() {}

    /**
     * Chooses among options.
     *
     * @param offered options of trucks that may come; others are not looked at
     * @param now options among them that are chosen now: a start
     */
    static Answer solve(Problem problem, Scope scope, int[] offered, int[] now, Limits limits) {
        return solve(problem, scope, offered, now, limits, CostScale.of(problem, offered));
    }

    /** @param scale whole numbers for the costs */
    static Answer solve(Problem problem, Scope scope, int[] offered, int[] now, Limits limits, Scaled scale) {
        PartModel built = new PartModel(problem, scope, offered, scale);
        built.hint(now);
        if (offered.length == 0) {
            return new Answer(new int[0], true, 0, true, 0);
        }
        CpModel model = built.model();
        CpSolver solver = new CpSolver();
        SatParameters.Builder parameters = solver.getParameters();
        parameters
                .setRandomSeed(limits.seed())
                .setNumWorkers(limits.workers())
                .setInterleaveSearch(limits.workers() > 1)
                .setRelativeGapLimit(limits.enoughGap())
                .setMaxDeterministicTime(limits.work())
                .setMaxTimeInSeconds(Math.max(LEAST_SECONDS, Math.min(1e6, limits.secondsLeft())));
        CpSolverStatus status = solver.solve(model);
        double work = solver.response().getDeterministicTime();
        boolean best = status == CpSolverStatus.OPTIMAL && limits.enoughGap() == 0;
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new Answer(new int[0], false, Double.NEGATIVE_INFINITY, false, work);
        }
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < offered.length; i++) {
            if (solver.booleanValue(built.variable(i))) {
                chosen.add(offered[i]);
            }
        }
        double bound = solver.bestObjectiveBound() / scale.perCost() - scale.slack();
        return new Answer(chosen.stream().mapToInt(Integer::intValue).toArray(), true, bound, best, work);
    }
}
