package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import java.util.List;

/**
 * One truck before the schedule.
 *
 * @param priced the truck, what is due of it, and the prices of its visits
 * @param visits the ways it may come in, in the order of {@code options}
 * @param options the same for the scheduler
 */
record TruckChoices(PricedTruck priced, List<PricedVisit> visits, TruckOptions options) {
    TruckChoices {
        visits = List.copyOf(visits);
    }

    Truck truck() {
        return priced.truck();
    }

    List<DueItem> dueItems() {
        return priced.dueItems();
    }

    CylinderSets sets() {
        return priced.sets();
    }

    OptionPricer pricer() {
        return priced.pricer();
    }

    /** The way that an option stands for. */
    PricedVisit visitOf(VisitOption option) {
        int at = options.options().indexOf(option);
        if (at < 0) {
            throw new IllegalStateException("truck " + truck().truck() + " was given no such option: " + option);
        }
        return visits.get(at);
    }
}
