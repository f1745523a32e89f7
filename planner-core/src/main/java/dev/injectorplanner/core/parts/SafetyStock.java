package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Failures in service to be ready for, by depot and part, until an order placed at the buyer's next look has come. The lead
 * time is one of {@link UnplannedNeeds#LEAD_TIMES} between the usual and the longest, each as likely as the others.
 */
public final class SafetyStock {
    private final FleetIndex index;
    private final OrderRules rules;
    private final FailureForecast forecast;

    public SafetyStock(FleetIndex index, OrderRules rules, FailureForecast forecast) {
        this.index = index;
        this.rules = rules;
        this.forecast = forecast;
    }

    /** The smallest stock that suffices with the service level, pieces; 0 for a part that is not in the table. */
    public double of(DepotPartKey shelf) {
        return index.findPart(shelf.part())
                .map(part -> demand(shelf, part, rules, forecast).smallestStock(rules.serviceLevel()))
                .orElse(0);
    }

    static Demand demand(DepotPartKey shelf, Part part, OrderRules rules, FailureForecast forecast) {
        int least = part.leadDays() + rules.reviewDays();
        int most = part.leadDaysMax() + rules.reviewDays();
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < UnplannedNeeds.LEAD_TIMES; i++) {
            int days = (int) Math.round(least + (most - least) * (double) i / (UnplannedNeeds.LEAD_TIMES - 1));
            demands.add(Demand.ofChances(forecast.chancesWithin(shelf.depot(), shelf.part(), days)));
        }
        return Demand.anyOf(demands);
    }
}
