package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Transfer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** What can be had of each part, from where, by when and at what price, whoever asks. */
public final class Sourcing {
    private final FleetIndex index;
    private final LocalDate today;
    private final ShipmentRules rules;
    private final ToDoubleFunction<DepotPartKey> keptBack;
    private final Map<DepotPartKey, Double> kept = new HashMap<>();
    private final Map<String, List<Route>> routes = new HashMap<>();

    /** A way from another depot: its cost, and the days it takes. */
    record Route(String from, double cost, int days) {}

    /** @param keptBack pieces that a depot does not give away, beside what its visits need; asked once a shelf */
    public Sourcing(FleetIndex index, LocalDate today, ShipmentRules rules, ToDoubleFunction<DepotPartKey> keptBack) {
        this.index = index;
        this.today = today;
        this.rules = rules;
        this.keptBack = keptBack;
        Map<String, Transfer> pairs = new HashMap<>();
        index.fleet().transfers().forEach(row -> pairs.put(row.from() + "\n" + row.to(), row));
        Set<String> giving = new TreeSet<>();
        index.fleet().depots().forEach(depot -> giving.add(depot.depot()));
        index.fleet().spares().forEach(line -> giving.add(line.depot()));
        for (Depot to : index.fleet().depots()) {
            List<Route> ways = new ArrayList<>();
            for (String from : giving) {
                if (!from.equals(to.depot())) {
                    Transfer row = pairs.get(from + "\n" + to.depot());
                    ways.add(
                            row == null
                                    ? new Route(from, rules.transferCost(), rules.transferDays())
                                    : new Route(from, row.cost().doubleValue(), row.days()));
                }
            }
            ways.sort(Comparator.comparingDouble(Route::cost)
                    .thenComparingInt(Route::days)
                    .thenComparing(Route::from));
            routes.put(to.depot(), ways);
        }
    }

    LocalDate today() {
        return today;
    }

    /** The day on which an ordinary order of today has come whatever happens. */
    LocalDate orderedOn(String part) {
        return today.plusDays(index.findPart(part).map(Part::leadDaysMax).orElse(0));
    }

    /** Whether an order of today is in time even at the longest lead time; of a part that is not in the table, always. */
    public boolean canOrder(String part, LocalDate by) {
        return !orderedOn(part).isAfter(by);
    }

    String supplierOf(String part) {
        return index.findPart(part).map(Part::supplier).orElse("");
    }

    LocalDate expressOn() {
        return today.plusDays(rules.expressDays());
    }

    double expressCost() {
        return rules.expressCost();
    }

    /** Ways to a depot, the cheapest first. */
    List<Route> routesTo(String depot) {
        return routes.getOrDefault(depot, List.of());
    }

    double keptBack(DepotPartKey shelf) {
        return kept.computeIfAbsent(shelf, keptBack::applyAsDouble);
    }
}
