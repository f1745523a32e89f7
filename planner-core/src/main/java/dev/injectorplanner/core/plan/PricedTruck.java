package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import java.util.List;

/**
 * A truck with its ways to come in, before anybody holds it and before hours are looked at: the costly part of a plan, the
 * same for every hold and capacity.
 *
 * @param truck the truck
 * @param dueItems what is due of it, most pressing first; may be empty
 * @param sets its engine's sets
 * @param pricer prices its visits
 * @param visits the ways worth looking at
 */
record PricedTruck(
        Truck truck, List<DueItem> dueItems, CylinderSets sets, OptionPricer pricer, List<PricedVisit> visits) {
    PricedTruck {
        dueItems = List.copyOf(dueItems);
        visits = List.copyOf(visits);
    }
}
