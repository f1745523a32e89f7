package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Stock for failures that no plan foresees, by depot and injector part. The days to cover are the lead time and the days
 * until the buyer looks again; the lead time is one of {@link #LEAD_TIMES} between the usual and the longest, each as
 * likely as the others (planner default).
 */
final class UnplannedNeeds {
    /** Lead times that stand for all between the usual and the longest. */
    static final int LEAD_TIMES = 5;

    private final FleetIndex index;
    private final LocalDate today;
    private final OrderRules rules;
    private final FailureForecast forecast;
    private final Supply supply;
    private final VisitParts parts;

    UnplannedNeeds(FleetIndex index, LocalDate today, OrderRules rules, FailureForecast forecast, PartNeeds needs) {
        this.index = index;
        this.today = today;
        this.rules = rules;
        this.forecast = forecast;
        this.supply = needs.supply();
        this.parts = needs.parts();
    }

    /** @param planned needs of the planned visits */
    List<UnplannedNeed> of(List<PartNeed> planned) {
        List<UnplannedNeed> rows = new ArrayList<>();
        if (forecast.known()) {
            Map<DepotPartKey, List<PartNeed>> byShelf = planned.stream()
                    .collect(Collectors.groupingBy(need -> new DepotPartKey(need.depot(), need.part())));
            for (DepotPartKey shelf : injectorShelves()) {
                index.findPart(shelf.part()).ifPresent(part -> {
                    UnplannedNeed need = need(shelf, part, byShelf.getOrDefault(shelf, List.of()));
                    if (need.injectors() > 0) {
                        rows.add(need);
                    }
                });
            }
        }
        return rows;
    }

    private Iterable<DepotPartKey> injectorShelves() {
        Map<DepotPartKey, Boolean> shelves = new TreeMap<>();
        for (Truck truck : index.fleet().trucks()) {
            if (truck.inServiceAt(today)) {
                EngineFamily family = index.family(truck.family());
                family.allCylinders()
                        .forEach(cylinder -> shelves.put(
                                new DepotPartKey(truck.depot(), parts.injectorFor(truck.truck(), family, cylinder)),
                                true));
            }
        }
        return shelves.keySet();
    }

    private UnplannedNeed need(DepotPartKey shelf, Part part, List<PartNeed> planned) {
        int least = part.leadDays() + rules.reviewDays();
        int most = part.leadDaysMax() + rules.reviewDays();
        int injectors = forecast.chancesWithin(shelf.depot(), shelf.part(), most).length;
        Demand demand = SafetyStock.demand(shelf, part, rules, forecast);
        int target = demand.smallestStock(rules.serviceLevel());
        double free = free(shelf, planned, today.plusDays(most));
        double later = Math.max(
                free, free(shelf, planned, LocalDate.MAX)); // an open line that comes later is not bought again
        return new UnplannedNeed(
                shelf.depot(),
                shelf.part(),
                injectors,
                least,
                most,
                demand.mean(),
                target,
                free,
                Math.max(0, target - later),
                demand.chanceOfAtMost((int) Math.floor(free)),
                demand.errorBound(),
                demand.method());
    }

    /** What planned visits leave by a day, what is missing for them taken to be ordered. */
    private double free(DepotPartKey shelf, List<PartNeed> planned, LocalDate until) {
        double free = supply.until(shelf, until);
        for (PartNeed need : planned) {
            if (!supply.readyDay(need.week()).isAfter(until)) {
                free += need.missing() - need.required();
            }
        }
        return Figures.tidy(Math.max(0, free));
    }
}
