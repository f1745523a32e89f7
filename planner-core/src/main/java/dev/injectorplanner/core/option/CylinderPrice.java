package dev.injectorplanner.core.option;

import dev.injectorplanner.core.check.Require;

/**
 * What it means to replace one cylinder's injector in each week, against leaving it to its best later moment.
 *
 * @param cylinder the cylinder
 * @param deferral deferral cost D(x) until each week, from now: deferral[week], as in {@code core.defect.CostOfDeferring}
 * @param later deferral cost of its best moment at or beyond the horizon's end: what not doing it comes to
 * @param share shared access cost already inside the planned cost that D is made of
 * @param late what being past a firm limit costs if it is done in each week, against not doing it: late[week], 0 or less;
 *     all zeros where no limit presses
 */
public record CylinderPrice(int cylinder, double[] deferral, double later, double share, double[] late) {
    public CylinderPrice {
        Require.within("cylinder", cylinder, 1, 16);
        if (deferral.length != late.length) {
            throw new IllegalArgumentException(deferral.length + " weeks of deferral, " + late.length + " of lateness");
        }
        deferral = deferral.clone();
        late = late.clone();
    }

    @Override
    public double[] deferral() {
        return deferral.clone();
    }

    @Override
    public double[] late() {
        return late.clone();
    }

    /** Of {@link #gain}, what lateness weighs that week. */
    double late(int week) {
        return late[week];
    }

    /** Weeks of the horizon, which every figure here has one of. */
    public int weeks() {
        return deferral.length;
    }

    /** Cost of doing it that week against leaving it, before any shared access is paid: below zero it saves. */
    public double gain(int week) {
        return deferral[week] - later - share + late[week];
    }
}
