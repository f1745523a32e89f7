package dev.injectorplanner.app.planning;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.store.Elsewhere;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.parts.ShelfState;
import dev.injectorplanner.core.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What other depots can give one that is planned by itself: their stock less what their own plans in force need, safety stock
 * counted, and less what other plans in force are to be sent from there. A depot without a plan gives nothing, since nobody knows
 * what it needs.
 */
final class SparePieces {
    private static final int MOST_PLANS = 500;

    private final Store store;
    private final KeptPlans plans;
    private final Cache<Long, Claims> known =
            Caffeine.newBuilder().maximumSize(MOST_PLANS).build();

    /** What a plan takes: its own needs by shelf, and pieces that other depots are to send. */
    private record Claims(Map<DepotPartKey, Double> needed, List<AllocatedPieces> sent) {
        /** Pieces that a shelf is to send to others than one depot. */
        double sentFrom(DepotPartKey shelf, String butTo) {
            return sent.stream()
                    .filter(each -> shelf.depot().equals(each.fromDepot())
                            && shelf.part().equals(each.part()))
                    .filter(each -> !each.depot().equals(butTo))
                    .mapToDouble(AllocatedPieces::quantity)
                    .sum();
        }
    }

    SparePieces(Store store, KeptPlans plans) {
        this.store = store;
        this.plans = plans;
    }

    /** The same fleet of one depot with what others can give it. */
    FleetSnapshot offer(FleetSnapshot fleet, String depot) {
        Elsewhere elsewhere = store.elsewhere(depot);
        if (elsewhere.stock().isEmpty()) {
            return fleet;
        }
        Map<String, Optional<Claims>> claimsOf = new HashMap<>();
        elsewhere.depots().forEach(other -> claimsOf.put(other, inForce(other)));
        Set<Claims> all = new HashSet<>();
        claimsOf.values().forEach(claims -> claims.ifPresent(all::add));
        List<StockLine> spares = new ArrayList<>();
        for (StockLine line : elsewhere.stock()) {
            DepotPartKey shelf = new DepotPartKey(line.depot(), line.part());
            claimsOf.getOrDefault(line.depot(), Optional.empty()).ifPresent(claims -> {
                double sent = all.stream()
                        .mapToDouble(each -> each.sentFrom(shelf, depot))
                        .sum();
                double spare = Math.floor(line.onHand() - claims.needed().getOrDefault(shelf, 0.0) - sent);
                if (spare > 0) {
                    spares.add(new StockLine(line.depot(), line.part(), spare));
                }
            });
        }
        Set<String> giving = new HashSet<>();
        spares.forEach(line -> giving.add(line.depot()));
        return fleet.withSpares(
                spares,
                elsewhere.ways().stream()
                        .filter(way -> giving.contains(way.from()))
                        .toList());
    }

    private Optional<Claims> inForce(String depot) {
        Optional<Long> id = plans.findInForceId(depot);
        if (id.isEmpty()) {
            return Optional.empty();
        }
        Claims there = known.getIfPresent(id.get());
        if (there != null) {
            return Optional.of(there);
        }
        Optional<Claims> read = plans.find(id.get()).map(KeptPlan::plan).map(SparePieces::claims);
        read.ifPresent(claims -> known.put(id.get(), claims));
        return read;
    }

    private static Claims claims(Plan plan) {
        Map<DepotPartKey, Double> needed = new HashMap<>();
        for (ShelfState shelf : plan.parts().shelves()) {
            needed.merge(new DepotPartKey(shelf.depot(), shelf.part()), shelf.needed(), Double::sum);
        }
        return new Claims(
                needed,
                plan.parts().allocation().pieces().stream()
                        .filter(each -> each.source() == PieceSource.TRANSFER && each.order() == null)
                        .toList());
    }
}
