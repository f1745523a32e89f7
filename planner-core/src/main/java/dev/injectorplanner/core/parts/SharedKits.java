package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.allocation.Incoming;
import dev.injectorplanner.core.allocation.KitNeed;
import dev.injectorplanner.core.allocation.SharedStock;
import dev.injectorplanner.core.allocation.Sourcing;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Kits of visits, and the stock that they share. */
public final class SharedKits {
    private static final Comparator<Planned> IN_TURN = Comparator.comparing(
                    (Planned each) -> each.visit().week())
            .thenComparing(each -> each.visit().truck());

    private final VisitParts parts;
    private final OrderRules rules;
    private final Sourcing sourcing;
    private final List<Incoming> incoming;

    /**
     * A visit that has its week.
     *
     * @param by the last day on which its kit can be complete
     * @param asked whether it was asked for: a pin, a safety date
     */
    public record Planned(Visit visit, LocalDate by, boolean asked) {}

    /** @param keptBack pieces that a depot keeps for failures that no plan foresees */
    public SharedKits(FleetIndex index, LocalDate today, OrderRules rules, ToDoubleFunction<DepotPartKey> keptBack) {
        this.parts = new VisitParts(index, today);
        this.rules = rules;
        this.sourcing = new Sourcing(index, today, rules.shipments(), keptBack);
        this.incoming = new Supply(index, today).incoming();
    }

    /** The kit of one visit, seen alone. */
    public KitPieces kitOf(Visit visit) {
        Map<String, Double> certain = new TreeMap<>();
        Map<String, StockDemand> whole = new TreeMap<>();
        parts.of(visit, (part, times, quantity, chance) -> {
            whole.computeIfAbsent(part, none -> new StockDemand()).add(times, quantity, chance);
            if (chance >= 1) {
                certain.merge(part, times * quantity, Double::sum);
            }
        });
        Map<String, Double> pieces = new TreeMap<>();
        whole.forEach((part, demand) -> pieces.put(part, demand.required(rules.serviceLevel())));
        return new KitPieces(certain, pieces);
    }

    /**
     * A kit for each visit: what it adds to the pieces that cover all visits up to it with the service level, since those
     * that break by their chance share their luck and go back to the shelf where they do not.
     */
    public List<KitNeed> needs(List<Planned> visits) {
        Map<DepotPartKey, StockDemand> demands = new HashMap<>();
        List<KitNeed> needs = new ArrayList<>();
        for (Planned each : visits.stream().sorted(IN_TURN).toList()) {
            Visit visit = each.visit();
            Map<String, StockDemand> ofParts = new TreeMap<>();
            Map<String, Double> adds = new TreeMap<>();
            parts.of(visit, (part, times, quantity, chance) -> {
                StockDemand demand =
                        demands.computeIfAbsent(new DepotPartKey(visit.depot(), part), none -> new StockDemand());
                if (ofParts.putIfAbsent(part, demand) == null) {
                    adds.put(part, -demand.required(rules.serviceLevel()));
                }
                demand.add(times, quantity, chance);
            });
            ofParts.forEach((part, demand) ->
                    adds.merge(part, demand.required(rules.serviceLevel()), (less, now) -> Math.max(0, now + less)));
            needs.add(new KitNeed(visit.truck(), visit.depot(), visit.week(), each.by(), each.asked(), adds));
        }
        return needs;
    }

    /** Shares the stock among kits. */
    public SharedStock share(List<KitNeed> needs) {
        return SharedStock.of(sourcing, incoming, needs);
    }

    /** The allocation of visits by their weeks alone: a kit may come until the week's Sunday. */
    public Allocation ofWeeks(List<Visit> visits) {
        return share(needs(visits.stream()
                        .map(visit -> new Planned(visit, visit.week().sunday(), false))
                        .toList()))
                .allocation();
    }

    /** Parts that an order placed today brings in time for a day are short of nothing. */
    public boolean canOrder(String part, LocalDate by) {
        return sourcing.canOrder(part, by);
    }
}
