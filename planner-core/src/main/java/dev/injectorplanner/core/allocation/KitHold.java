package dev.injectorplanner.core.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What one kit holds: pieces of its own shelf, and shipments. */
final class KitHold {
    final KitNeed need;
    final Map<String, Double> local = new TreeMap<>();
    final List<Way> ways = new ArrayList<>();

    /**
     * How the missing pieces of one supplier come.
     *
     * @param route the transfer, or null for an express shipment
     */
    record Way(
            Map<String, Double> pieces,
            String supplier,
            Sourcing.@org.jspecify.annotations.Nullable Route route,
            double cost) {}

    KitHold(KitNeed need) {
        this.need = need;
    }

    DepotPartKey own(String part) {
        return new DepotPartKey(need.depot(), part);
    }

    static LocalDate sendBy(LocalDate by, Sourcing.Route route) {
        return by.minusDays(route.days());
    }

    /** Promises all it holds, or gives it back. */
    void book(StockLedger ledger, int sign) {
        local.forEach((part, pieces) -> ledger.promise(own(part), need.by(), sign * pieces));
        for (Way way : ways) {
            Sourcing.Route route = way.route();
            if (route != null) {
                way.pieces()
                        .forEach((part, pieces) -> ledger.promise(
                                new DepotPartKey(route.from(), part), sendBy(need.by(), route), sign * pieces));
            }
        }
    }

    double cost() {
        return ways.stream().mapToDouble(Way::cost).sum();
    }
}
