package dev.injectorplanner.core.schedule.exact;

/** By how much the cells' choices together break the relaxed limits; below 0 where there is room. */
final class Violation {
    private final double[] truck;
    private final double[] bay;
    private final double[] group;

    Violation(Problem problem) {
        truck = new double[problem.truckCount()];
        bay = new double[problem.cells.length];
        group = new double[problem.groupDays.length];
    }

    static Violation of(Problem problem, Scope scope, Relaxation relaxation) {
        Violation now = new Violation(problem);
        for (int t = 0; t < now.truck.length; t++) {
            now.truck[t] = scope.mayCome()[t] ? -1 : 0;
        }
        for (int g = 0; g < now.group.length; g++) {
            now.group[g] = -scope.groupDays()[g];
        }
        for (int cell = 0; cell < now.bay.length; cell++) {
            now.bay[cell] = scope.closed()[cell] ? 0 : -scope.bayDays()[cell];
            for (int option : relaxation.pattern(cell)) {
                now.truck[problem.truckOf[option]]++;
                now.bay[cell] += problem.days[option];
                if (problem.groupOf[option] >= 0) {
                    now.group[problem.groupOf[option]] += problem.days[option];
                }
            }
        }
        return now;
    }

    /** Moves this towards another by a share. */
    void mix(Violation other, double share) {
        mix(truck, other.truck, share);
        mix(bay, other.bay, share);
        mix(group, other.group, share);
    }

    private static void mix(double[] mean, double[] now, double share) {
        for (int i = 0; i < mean.length; i++) {
            mean[i] += share * (now[i] - mean[i]);
        }
    }

    /** Square length of the part along which multipliers can move. */
    double norm(Multipliers at) {
        return norm(truck, at.truck()) + norm(bay, at.bay()) + norm(group, at.group());
    }

    private static double norm(double[] violation, double[] price) {
        double sum = 0;
        for (int i = 0; i < violation.length; i++) {
            sum += violation[i] > 0 || price[i] != 0 ? violation[i] * violation[i] : 0;
        }
        return sum;
    }

    /** Moves multipliers along; those of trucks that must be placed may fall below 0. */
    void move(Multipliers at, double step, Problem problem, Scope scope) {
        for (int t = 0; t < truck.length; t++) {
            double moved = at.truck()[t] + step * truck[t];
            at.truck()[t] = scope.mustCome(problem, t) ? moved : Math.max(0, moved);
        }
        move(at.bay(), bay, step);
        move(at.group(), group, step);
    }

    private static void move(double[] price, double[] violation, double step) {
        for (int i = 0; i < price.length; i++) {
            price[i] = Math.max(0, price[i] + step * violation[i]);
        }
    }
}
