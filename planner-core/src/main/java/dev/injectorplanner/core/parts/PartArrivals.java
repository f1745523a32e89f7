package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;

/**
 * When the parts of a visit can be there, for whoever chooses its week. Each visit is seen alone, as if nobody else took
 * from stock: a day that this names too early for a busy shelf comes out on the short list.
 */
public final class PartArrivals {
    private final Supply supply;
    private final PartNeeds needs;
    private final LocalDate today;

    public PartArrivals(FleetIndex index, LocalDate today, OrderRules rules) {
        this.needs = new PartNeeds(index, today, rules);
        this.supply = needs.supply();
        this.today = today;
    }

    /** The first day on which the whole kit is there, from stock, from open purchase lines, or ordered today. */
    public LocalDate readyOn(Visit visit) {
        LocalDate ready = today;
        for (Map.Entry<String, Kit> kit : needs.kitOf(visit).entrySet()) {
            LocalDate day = readyOn(
                    new DepotPartKey(visit.depot(), kit.getKey()),
                    kit.getValue().pieces());
            ready = day.isAfter(ready) ? day : ready;
        }
        return ready;
    }

    private LocalDate readyOn(DepotPartKey shelf, double pieces) {
        LocalDate ordered = supply.latestArrival(shelf.part());
        long days = ChronoUnit.DAYS.between(today, ordered);
        for (long ahead = 0; ahead < days; ahead++) {
            if (supply.until(shelf, today.plusDays(ahead)) >= pieces) {
                return today.plusDays(ahead);
            }
        }
        return ordered;
    }
}
