package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.finding.DueFinding;
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
 * @param truck the truck
 * @param findings what is due of it, most pressing first; may be empty
 * @param sets its engine's sets
 * @param pricer prices its visits
 * @param visits the ways it may come in, in the order of {@code options}
 * @param options the same for the scheduler
 */
record TruckCase(
        Truck truck,
        List<DueFinding> findings,
        CylinderSets sets,
        OptionPricer pricer,
        List<PricedVisit> visits,
        TruckOptions options) {
    TruckCase {
        findings = List.copyOf(findings);
        visits = List.copyOf(visits);
    }

    /** The way that an option stands for. */
    PricedVisit visitOf(VisitOption option) {
        int at = options.options().indexOf(option);
        if (at < 0) {
            throw new IllegalStateException("truck " + truck.truck() + " was given no such option: " + option);
        }
        return visits.get(at);
    }
}
