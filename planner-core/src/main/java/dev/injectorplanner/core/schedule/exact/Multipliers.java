package dev.injectorplanner.core.schedule.exact;

/** Prices of the limits that the relaxation lets go: one visit a truck, bay-days, truck-days of duty groups. */
record Multipliers(double[] truck, double[] bay, double[] group) {
    static Multipliers none(Problem problem) {
        return new Multipliers(
                new double[problem.truckCount()],
                new double[problem.cells.length],
                new double[problem.groupDays.length]);
    }

    Multipliers copy() {
        return new Multipliers(truck.clone(), bay.clone(), group.clone());
    }
}
