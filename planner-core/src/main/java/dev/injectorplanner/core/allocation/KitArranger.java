package dev.injectorplanner.core.allocation;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Arranges one kit from what a ledger can still promise. A part that an ordinary order of today brings in time is never
 * short. Of the others the depot's own pieces come first; what is missing of one supplier's parts comes in one shipment,
 * by express or from one other depot, whichever is cheaper.
 */
final class KitArranger {
    private final Sourcing sourcing;
    private final StockLedger ledger;

    KitArranger(Sourcing sourcing, StockLedger ledger) {
        this.sourcing = sourcing;
        this.ledger = ledger;
    }

    /** Pieces of a part that its own shelf can give by a day, no more than asked; 0 where an order is in time. */
    double local(String depot, String part, LocalDate by, double pieces) {
        return sourcing.canOrder(part, by) ? 0 : Math.min(pieces, ledger.available(new DepotPartKey(depot, part), by));
    }

    /** What shipments of a kit cost; infinite where it cannot be complete in time. */
    double price(String depot, LocalDate by, Map<String, Double> pieces) {
        Map<String, Map<String, Double>> missing = null;
        for (Map.Entry<String, Double> entry : pieces.entrySet()) {
            String part = entry.getKey();
            if (!sourcing.canOrder(part, by)) {
                double lacks = entry.getValue()
                        - Math.min(entry.getValue(), ledger.available(new DepotPartKey(depot, part), by));
                if (lacks > StockLedger.ROUNDING) {
                    missing = missing == null ? new TreeMap<>() : missing;
                    missing.computeIfAbsent(sourcing.supplierOf(part), none -> new TreeMap<>())
                            .put(part, lacks);
                }
            }
        }
        return missing == null ? 0 : shipped(depot, by, missing);
    }

    private double shipped(String depot, LocalDate by, Map<String, Map<String, Double>> missing) {
        double cost = 0;
        for (Map.Entry<String, Map<String, Double>> group : missing.entrySet()) {
            KitHold.Way way = cheapest(depot, by, group.getKey(), group.getValue());
            cost += way == null ? Double.POSITIVE_INFINITY : way.cost();
        }
        return cost;
    }

    /** Own pieces of a kit as far as they go. */
    void takeLocal(KitHold hold) {
        hold.need.pieces().forEach((part, pieces) -> {
            double local = local(hold.need.depot(), part, hold.need.by(), pieces);
            if (local > StockLedger.ROUNDING) {
                hold.local.put(part, local);
                ledger.promise(hold.own(part), hold.need.by(), local);
            }
        });
    }

    /** Ships what is missing; false where that is not possible, and then the hold has nothing. */
    boolean ship(KitHold hold) {
        Map<String, Map<String, Double>> missing = new TreeMap<>();
        hold.need.pieces().forEach((part, pieces) -> {
            double lacks = pieces - hold.local.getOrDefault(part, 0.0);
            if (lacks > StockLedger.ROUNDING && !sourcing.canOrder(part, hold.need.by())) {
                missing.computeIfAbsent(sourcing.supplierOf(part), none -> new TreeMap<>())
                        .put(part, lacks);
            }
        });
        for (Map.Entry<String, Map<String, Double>> group : missing.entrySet()) {
            KitHold.Way way = cheapest(hold.need.depot(), hold.need.by(), group.getKey(), group.getValue());
            if (way == null) {
                hold.book(ledger, -1);
                hold.local.clear();
                hold.ways.clear();
                return false;
            }
            hold.ways.add(way);
            Sourcing.Route route = way.route();
            if (route != null) {
                way.pieces()
                        .forEach((part, pieces) -> ledger.promise(
                                new DepotPartKey(route.from(), part), KitHold.sendBy(hold.need.by(), route), pieces));
            }
        }
        return true;
    }

    private KitHold.@Nullable Way cheapest(String depot, LocalDate by, String supplier, Map<String, Double> pieces) {
        KitHold.Way best = sourcing.expressOn().isAfter(by)
                ? null
                : new KitHold.Way(pieces, supplier, null, sourcing.expressCost());
        for (Sourcing.Route route : sourcing.routesTo(depot)) {
            if (best != null && route.cost() >= best.cost()) {
                return best;
            }
            if (canGive(route, by, pieces)) {
                return new KitHold.Way(pieces, supplier, route, route.cost());
            }
        }
        return best;
    }

    private boolean canGive(Sourcing.Route route, LocalDate by, Map<String, Double> pieces) {
        LocalDate sendBy = KitHold.sendBy(by, route);
        if (sendBy.isBefore(sourcing.today())) {
            return false;
        }
        for (Map.Entry<String, Double> each : pieces.entrySet()) {
            DepotPartKey giving = new DepotPartKey(route.from(), each.getKey());
            double free = ledger.available(giving, sendBy);
            if (free < each.getValue() - StockLedger.ROUNDING
                    || free - sourcing.keptBack(giving) < each.getValue() - StockLedger.ROUNDING) {
                return false;
            }
        }
        return true;
    }
}
