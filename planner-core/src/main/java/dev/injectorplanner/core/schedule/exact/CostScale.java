package dev.injectorplanner.core.schedule.exact;

/** Costs as whole numbers for the exact solver. */
final class CostScale {
    private static final double[] SCALES = {1, 10, 100, 1_000, 10_000};
    private static final double ROUNDING = 1e-7;

    /**
     * The scale chosen.
     *
     * @param perCost whole numbers a unit of cost
     * @param slack the most that rounding can shift a sum of costs; 0 where every cost is whole in this scale
     */
    record Scaled(double perCost, double slack) {
        long whole(double cost) {
            return Math.round(cost * perCost);
        }
    }

    private CostScale() {}

    static Scaled of(Problem problem, int[] offered) {
        for (double scale : SCALES) {
            if (isWhole(problem, offered, scale)) {
                return new Scaled(scale, 0);
            }
        }
        double finest = SCALES[SCALES.length - 1];
        double overtimeUnits = 0;
        for (Cell cell : problem.cells) {
            overtimeUnits += cell.units() - cell.plainUnits() + 1;
        }
        return new Scaled(finest, (offered.length + overtimeUnits) / finest);
    }

    /** For a part in which no overtime is paid. */
    static Scaled withoutOvertime(Problem problem, int[] offered) {
        for (double scale : SCALES) {
            if (costsAreWhole(problem, offered, scale)) {
                return new Scaled(scale, 0);
            }
        }
        double finest = SCALES[SCALES.length - 1];
        return new Scaled(finest, offered.length / finest);
    }

    private static boolean costsAreWhole(Problem problem, int[] offered, double scale) {
        for (int option : offered) {
            if (!isWhole(problem.cost[option] * scale)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isWhole(Problem problem, int[] offered, double scale) {
        if (!costsAreWhole(problem, offered, scale)) {
            return false;
        }
        for (Cell cell : problem.cells) {
            double premium = cell.capacity().overtimePremium() * scale;
            if (!isWhole(premium * cell.hoursPerUnit()) || !isWhole(premium * cell.plainRestHours())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) <= ROUNDING;
    }
}
