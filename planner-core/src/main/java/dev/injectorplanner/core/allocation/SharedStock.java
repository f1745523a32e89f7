package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The stock of all depots, shared by the visits of a schedule. First come kits that their own shelf makes complete, then
 * the own pieces of the others, then shipments for what is missing; so a depot gives away only what its own visits leave.
 * Kits are served by the last day on which they are needed, and once more with the smallest first; the better of both
 * stands: fewer kits that cannot be complete, then less cost. The same visits give the same allocation in whatever order.
 */
public final class SharedStock {
    private static final Comparator<KitNeed> BY_DAY = Comparator.comparing((KitNeed need) -> !need.asked())
            .thenComparing(KitNeed::by)
            .thenComparing(KitNeed::week)
            .thenComparing(KitNeed::truck);
    private static final Comparator<KitNeed> SMALLEST = Comparator.comparing((KitNeed need) -> !need.asked())
            .thenComparingDouble(SharedStock::count)
            .thenComparing(BY_DAY);

    private final Sourcing sourcing;
    private final List<Incoming> incoming;
    private final StockLedger ledger;
    private final KitArranger arranger;
    private final Map<String, KitHold> holds = new LinkedHashMap<>();
    private final Map<String, List<KitHold>> holdsOf = new HashMap<>();
    private final List<KitNeed> unmet = new ArrayList<>();

    private SharedStock(Sourcing sourcing, List<Incoming> incoming) {
        this.sourcing = sourcing;
        this.incoming = incoming;
        this.ledger = new StockLedger(incoming);
        this.arranger = new KitArranger(sourcing, ledger);
    }

    /**
     * Shares the stock.
     *
     * @param incoming what is on the shelves and on open order lines
     * @param needs a kit for each visit
     */
    public static SharedStock of(Sourcing sourcing, List<Incoming> incoming, List<KitNeed> needs) {
        SharedStock byDay = new SharedStock(sourcing, incoming).serve(needs, BY_DAY);
        if (byDay.unmet.isEmpty() && byDay.cost() == 0) {
            return byDay;
        }
        SharedStock smallest = new SharedStock(sourcing, incoming).serve(needs, SMALLEST);
        return smallest.betterThan(byDay) ? smallest : byDay;
    }

    private static double count(KitNeed need) {
        return need.pieces().values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private boolean betterThan(SharedStock other) {
        long asked = unmet.stream().filter(KitNeed::asked).count();
        long othersAsked = other.unmet.stream().filter(KitNeed::asked).count();
        if (asked != othersAsked) {
            return asked < othersAsked;
        }
        return unmet.size() != other.unmet.size()
                ? unmet.size() < other.unmet.size()
                : cost() < other.cost() - StockLedger.ROUNDING;
    }

    private SharedStock serve(List<KitNeed> needs, Comparator<KitNeed> order) {
        List<KitHold> waiting = new ArrayList<>();
        for (KitNeed need : needs.stream().sorted(order).toList()) {
            KitHold hold = new KitHold(need);
            if (isThere(need)) {
                arranger.takeLocal(hold);
                hold(hold);
            } else {
                waiting.add(hold);
            }
        }
        waiting.forEach(arranger::takeLocal);
        for (KitHold hold : waiting) {
            if (arranger.ship(hold)) {
                hold(hold);
            } else {
                unmet.add(hold.need);
            }
        }
        return this;
    }

    private void hold(KitHold hold) {
        holds.put(hold.need.key(), hold);
        holdsOf.computeIfAbsent(hold.need.truck(), none -> new ArrayList<>(1)).add(hold);
    }

    private boolean isThere(KitNeed need) {
        for (Map.Entry<String, Double> each : need.pieces().entrySet()) {
            double pieces = each.getValue();
            if (!sourcing.canOrder(each.getKey(), need.by())
                    && arranger.local(need.depot(), each.getKey(), need.by(), pieces) < pieces - StockLedger.ROUNDING) {
                return false;
            }
        }
        return true;
    }

    /**
     * What the shipments of another kit would cost beside all that is held.
     *
     * @return 0 or more; infinite where the kit cannot be complete by that day
     */
    public double price(String depot, LocalDate by, Map<String, Double> pieces) {
        return arranger.price(depot, by, pieces);
    }

    /** What a truck's own visits hold is free while something is asked. */
    public synchronized <R> R without(String truck, Supplier<R> asked) {
        List<KitHold> own = holdsOf.getOrDefault(truck, List.of());
        own.forEach(hold -> hold.book(ledger, -1));
        try {
            return asked.get();
        } finally {
            own.forEach(hold -> hold.book(ledger, 1));
        }
    }

    /** Kits that are complete in time. */
    public List<KitNeed> served() {
        return holds.values().stream().map(hold -> hold.need).sorted(BY_DAY).toList();
    }

    /** Whether a visit has its kit. */
    public boolean holds(KitNeed need) {
        return holds.containsKey(need.key());
    }

    /** Takes another kit in; false where it cannot be complete, and then nothing changes. */
    public boolean admit(KitNeed need) {
        KitHold hold = new KitHold(need);
        arranger.takeLocal(hold);
        boolean met = arranger.ship(hold);
        if (met) {
            hold(hold);
        }
        return met;
    }

    /** Visits whose kit cannot be complete in time. */
    public List<KitNeed> unmet() {
        return List.copyOf(unmet);
    }

    /** What a visit's shipments cost; 0 where it has none. */
    public double costOf(String truck, IsoWeek week) {
        KitHold hold = holds.get(truck + "\n" + week);
        return hold == null ? 0 : hold.cost();
    }

    private double cost() {
        return holds.values().stream().mapToDouble(KitHold::cost).sum();
    }

    /** Which piece goes where. */
    public Allocation allocation() {
        List<KitHold> served = holds.values().stream()
                .sorted(Comparator.comparing((KitHold hold) -> hold.need, BY_DAY))
                .toList();
        return new PieceAssignment(sourcing, incoming, ledger.copy()).of(served, unmet());
    }
}
