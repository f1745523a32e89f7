package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.parts.KitPieces;
import dev.injectorplanner.core.parts.SafetyStock;
import dev.injectorplanner.core.parts.SharedKits;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Prices the ways of every truck in service. */
final class FleetPricing {
    private final Learned learned;
    private final TruckPricing pricing;
    private final SharedKits kits;
    private final Map<String, KitPieces> kitOf = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> taskParts = new ConcurrentHashMap<>();

    FleetPricing(Learned learned) {
        this.learned = learned;
        this.pricing = learned.pricing();
        SafetyStock safety = new SafetyStock(
                learned.index(),
                learned.policy().orders(),
                new UnplannedChances(learned.risk().risks(), List.of()));
        this.kits = new SharedKits(
                learned.index(), learned.today(), learned.policy().orders(), safety::of);
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
        return new PricedTruck(truck, dueItems, sets, pricer, visits);
    }

    /** The day from which an order of today brings every part, even at its longest lead time. */
    LocalDate ordersReach() {
        int most = learned.index().fleet().parts().stream()
                .mapToInt(Part::leadDaysMax)
                .max()
                .orElse(0);
        return learned.today().plusDays(most);
    }

    /** Kits, and the stock they share. */
    SharedKits kits() {
        return kits;
    }

    /**
     * The kit of a visit: of its set of cylinders, and of its services that take parts. Trucks of one family share it where all
     * take the family's injector.
     */
    KitPieces kitOf(PricedTruck truck, PricedVisit visit) {
        String family = truck.truck().family();
        List<String> tasks = tasksWithParts(family, visit);
        int set = visit.set();
        if (set == 0 && tasks.isEmpty()) {
            return KitPieces.NONE;
        }
        boolean same = learned.index()
                .findPart(learned.index().family(family).injectorPart())
                .isPresent();
        String key = (same ? family : truck.truck().truck()) + "\n" + set + String.join("\n", tasks);
        return kitOf.computeIfAbsent(key, none -> kits.kitOf(standIn(truck, visit, learned.firstWeek())));
    }

    private List<String> tasksWithParts(String family, PricedVisit visit) {
        Set<String> withParts = taskParts.computeIfAbsent(
                family,
                none -> learned.index().jobPartsOf(family).stream()
                        .filter(job -> job.per() == Per.TASK)
                        .map(job -> String.valueOf(job.task()))
                        .collect(Collectors.toCollection(TreeSet::new)));
        return withParts.isEmpty()
                ? List.of()
                : visit.rideAlongs().stream()
                        .map(RideAlongTask::name)
                        .filter(withParts::contains)
                        .sorted()
                        .toList();
    }

    /** A visit as far as parts look at one. */
    static Visit standIn(PricedTruck truck, PricedVisit visit, IsoWeek week) {
        int set = visit.set();
        return new Visit(
                truck.truck().truck(),
                truck.truck().depot(),
                truck.truck().family(),
                week,
                CylinderSets.cylindersOf(set),
                truck.sets().steps(set),
                visit.rideAlongs().stream().map(RideAlongTask::name).toList(),
                false,
                truck.sets().labourHours(set),
                0,
                List.of(),
                "");
    }
}
