package dev.injectorplanner.core.schedule.exact;

/**
 * Looks for multipliers with a high bound: subgradient steps whose direction is a running mean of the cells' choices
 * (volume algorithm; Barahona and Anbil, 2000), their length aimed at a known schedule's cost (Polyak).
 */
final class BoundSearch {
    private static final double FIRST_FACTOR = 1.0;
    private static final double LEAST_FACTOR = 1e-4;

    private static final double LEAST_AIM = 1e-4;

    private final Problem problem;
    private final Relaxation relaxation;
    private final Scope scope;
    private Multipliers best;
    private double bound = Double.NEGATIVE_INFINITY;
    private final Violation mean;
    private double factor = FIRST_FACTOR;
    private int failures;
    private boolean started;

    BoundSearch(Problem problem, Relaxation relaxation, Scope scope, Multipliers start) {
        this.problem = problem;
        this.scope = scope;
        relaxation.restrict(scope);
        this.relaxation = relaxation;
        this.best = start;
        this.mean = new Violation(problem);
    }

    double bound() {
        return bound;
    }

    Multipliers best() {
        return best;
    }

    /** Takes some steps towards a cost that is thought to be above the bound. */
    void run(int steps, double target) {
        Multipliers at = best.copy();
        for (int step = 0; step < steps; step++) {
            if (started) {
                at = step(target);
            }
            double value = relaxation.solve(at) - constant(at);
            Violation now = Violation.of(problem, scope, relaxation);
            if (value > bound) {
                failures = 0;
                factor = Math.min(2, factor * 1.05);
                bound = value;
                best = at;
            } else if (++failures % 10 == 0) {
                factor = Math.max(LEAST_FACTOR, factor * 0.7);
            }
            mean.mix(now, started ? 0.1 : 1);
            started = true;
        }
    }

    private Multipliers step(double target) {
        double norm = mean.norm(best);
        Multipliers next = best.copy();
        if (norm > 0) {
            double aim = Math.max(target - bound, LEAST_AIM * Math.abs(bound));
            mean.move(next, factor * aim / norm, problem, scope);
        }
        return next;
    }

    private double constant(Multipliers at) {
        double sum = 0;
        for (int truck = 0; truck < at.truck().length; truck++) {
            sum += scope.mayCome()[truck] ? at.truck()[truck] : 0;
        }
        for (int cell = 0; cell < at.bay().length; cell++) {
            sum += scope.closed()[cell] ? 0 : at.bay()[cell] * scope.bayDays()[cell];
        }
        for (int group = 0; group < at.group().length; group++) {
            sum += at.group()[group] * scope.groupDays()[group];
        }
        return sum;
    }
}
