package dev.injectorplanner.core.option;

import java.util.List;

/**
 * One way to treat a truck, with what its price is made of.
 *
 * @param week weeks from the plan's first
 * @param set cylinders whose injectors are replaced, as a mask of {@link CylinderSets}; 0 for none
 * @param rideAlongs inspection and tasks done along, or alone
 * @param labourHours labour of all of it
 * @param truckDays days the truck stands
 * @param gains cost of the cylinders against leaving them, before shared access
 * @param sharedCost cost of the shared access: labour, coolant, bay
 * @param downtime cost of standing
 * @param rideAlongCost labour of the work beside the cylinders and what doing it then costs against not doing it
 * @param weights of the cost, what is a weight and no money: lateness past limits
 */
public record PricedVisit(
        int week,
        int set,
        List<RideAlongTask> rideAlongs,
        double labourHours,
        double truckDays,
        double gains,
        double sharedCost,
        double downtime,
        double rideAlongCost,
        double weights) {
    public PricedVisit {
        rideAlongs = List.copyOf(rideAlongs);
    }

    /** Cost against no visit; below zero it saves. */
    public double cost() {
        return gains + sharedCost + downtime + rideAlongCost;
    }

    /** Cylinders, ascending. */
    public List<Integer> cylinders() {
        return CylinderSets.cylindersOf(set);
    }
}
