package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.parts.PartArrivals;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Prices the ways of every truck in service. */
final class FleetPricing {
    private final Learned learned;
    private final TruckPricing pricing;
    private final PartArrivals arrivals;

    FleetPricing(Learned learned) {
        this.learned = learned;
        this.pricing = learned.pricing();
        this.arrivals = new PartArrivals(
                learned.index(), learned.today(), learned.policy().orders());
    }

    /** Trucks in service, the one with the most pressing due item first, then by what a visit saves. */
    List<PricedTruck> trucks() {
        Map<String, List<DueItem>> due = new HashMap<>();
        learned.dueItems()
                .forEach(item -> due.computeIfAbsent(item.truck(), truck -> new ArrayList<>())
                        .add(item));
        List<PricedTruck> trucks = new ArrayList<>();
        for (Truck truck : learned.index().fleet().trucks()) {
            if (truck.inServiceAt(learned.today())) {
                trucks.add(priced(truck, due.getOrDefault(truck.truck(), List.of())));
            }
        }
        trucks.sort(Comparator.comparing(FleetPricing::mostPressing, Comparator.nullsLast(DueItems.MOST_PRESSING))
                .thenComparingDouble(FleetPricing::leastCost)
                .thenComparing(each -> each.truck().truck()));
        return trucks;
    }

    private static @Nullable DueItem mostPressing(PricedTruck truck) {
        return truck.dueItems().isEmpty() ? null : truck.dueItems().get(0);
    }

    private static double leastCost(PricedTruck truck) {
        return truck.visits().stream().mapToDouble(PricedVisit::cost).min().orElse(0);
    }

    private PricedTruck priced(Truck truck, List<DueItem> dueItems) {
        OptionPricer pricer = pricing.pricerOf(truck, dueItems);
        CylinderSets sets = pricing.setsOf(truck);
        List<PricedVisit> visits = pricer.worthwhile(learned.policy().visits().keptSets());
        Map<Integer, LocalDate> kitOn = new HashMap<>();
        for (PricedVisit visit : visits) {
            kitOn.computeIfAbsent(visit.set(), set -> kitOn(truck, sets, set));
        }
        return new PricedTruck(truck, dueItems, sets, pricer, visits, kitOn);
    }

    /** The day on which the kit of a set can be there in its own time; today where nothing is replaced. */
    LocalDate kitOn(Truck truck, CylinderSets sets, int set) {
        return set == 0 ? learned.today() : arrivals.readyOn(standIn(truck, sets, set));
    }

    /** The day on which the kit of a set is there: in its own time, or by express shipment. */
    LocalDate partsThere(PricedTruck truck, int set) {
        if (set == 0) {
            return learned.today();
        }
        LocalDate known = truck.kitOn().get(set);
        LocalDate ready = known != null ? known : kitOn(truck.truck(), truck.sets(), set);
        LocalDate express = learned.today().plusDays(learned.policy().orders().expediteDays());
        return ready.isBefore(express) ? ready : express;
    }

    private Visit standIn(Truck truck, CylinderSets sets, int set) {
        return new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                learned.firstWeek(),
                CylinderSets.cylindersOf(set),
                sets.steps(set),
                List.of(),
                false,
                sets.labourHours(set),
                0,
                List.of(),
                "");
    }
}
