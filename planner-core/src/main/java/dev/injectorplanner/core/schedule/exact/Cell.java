package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.WeekCapacity;

/**
 * A depot's week, its hours counted in units.
 *
 * @param capacity what there is
 * @param hoursPerUnit length of a unit
 * @param units whole units in plain hours and overtime together
 * @param plainUnits whole units in plain hours
 */
record Cell(WeekCapacity capacity, double hoursPerUnit, int units, int plainUnits) {
    private static final double ROUNDING = 1e-7;

    static Cell of(WeekCapacity capacity, double hoursPerUnit) {
        return new Cell(
                capacity,
                hoursPerUnit,
                whole((capacity.labourHours() + capacity.overtimeHours()) / hoursPerUnit),
                whole(capacity.labourHours() / hoursPerUnit));
    }

    private static int whole(double units) {
        return (int) Math.min(Integer.MAX_VALUE / 4, Math.floor(units + ROUNDING));
    }

    /** What overtime costs beyond plain hours when this many units are used. */
    double overtimeCost(int used) {
        return used <= plainUnits ? 0 : capacity.overtimePremium() * overtimeHours(used);
    }

    private double overtimeHours(int used) {
        return Math.max(0, used * hoursPerUnit - capacity.labourHours());
    }

    /** Plain hours beyond the last whole unit: the first overtime unit is dear by that much less. */
    double plainRestHours() {
        return Math.max(0, capacity.labourHours() - plainUnits * hoursPerUnit);
    }

    /** The most that units at a price can earn over their overtime: the capacity's part in a bound at that price. */
    double worthAt(double price) {
        double dear = capacity.overtimePremium() * hoursPerUnit;
        return price <= dear
                ? price * Math.min(units, capacity.labourHours() / hoursPerUnit)
                : price * units - overtimeCost(units);
    }
}
