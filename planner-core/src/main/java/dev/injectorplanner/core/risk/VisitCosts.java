package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.fleet.Truck;

/** What a visit costs beyond parts and the cylinders' own labour, spread over its cylinders. */
public interface VisitCosts {
    /** A cylinder's share of a typical visit: access labour, coolant, bay and standing. */
    double share(Truck truck);

    /** The same of a visit for one cylinder alone, the mean over the engine's cylinders. */
    double alone(Truck truck);

    /** Cost of a visit that only tests: labour, bay and standing. */
    double test(Truck truck);
}
