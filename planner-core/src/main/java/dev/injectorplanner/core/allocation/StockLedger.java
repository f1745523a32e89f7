package dev.injectorplanner.core.allocation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * What each shelf can still promise. Pieces promised for a day may be any that are there by then, so a shelf can promise
 * what is left on that day and on every later day on which something is promised.
 */
final class StockLedger {
    static final double ROUNDING = 1e-9;

    private final Map<DepotPartKey, Flow> flows = new HashMap<>();

    private static final class Flow {
        private final List<Incoming> in;
        private final NavigableMap<LocalDate, Double> promised = new TreeMap<>();

        Flow(List<Incoming> in) {
            this.in = in;
        }

        double until(LocalDate day) {
            double sum = 0;
            for (Incoming each : in) {
                if (each.on().isAfter(day)) {
                    break;
                }
                sum += each.pieces();
            }
            return sum;
        }

        double available(LocalDate by) {
            double gone = 0;
            for (double pieces : promised.headMap(by, true).values()) {
                gone += pieces;
            }
            double least = until(by) - gone;
            for (Map.Entry<LocalDate, Double> later :
                    promised.tailMap(by, false).entrySet()) {
                gone += later.getValue();
                least = Math.min(least, until(later.getKey()) - gone);
            }
            return least > ROUNDING ? least : 0;
        }
    }

    StockLedger(List<Incoming> incoming) {
        Map<DepotPartKey, List<Incoming>> byShelf = new HashMap<>();
        incoming.forEach(each ->
                byShelf.computeIfAbsent(each.shelf(), none -> new ArrayList<>()).add(each));
        byShelf.forEach((shelf, those) -> {
            those.sort(BY_DAY);
            flows.put(shelf, new Flow(those));
        });
    }

    /** Those on the shelf first, then by day and order. */
    static final Comparator<Incoming> BY_DAY = Comparator.comparing((Incoming each) -> each.order() != null)
            .thenComparing(Incoming::on)
            .thenComparing(Incoming::order, Comparator.nullsFirst(Comparator.naturalOrder()));

    private StockLedger(StockLedger other) {
        other.flows.forEach((shelf, flow) -> {
            Flow copy = new Flow(flow.in);
            copy.promised.putAll(flow.promised);
            flows.put(shelf, copy);
        });
    }

    StockLedger copy() {
        return new StockLedger(this);
    }

    /** Pieces that can be promised for a day without breaking what is promised. */
    double available(DepotPartKey shelf, LocalDate by) {
        Flow flow = flows.get(shelf);
        return flow == null ? 0 : flow.available(by);
    }

    /** Promises pieces; a negative number gives back. */
    void promise(DepotPartKey shelf, LocalDate by, double pieces) {
        Flow flow = flows.get(shelf);
        if (flow != null) {
            double now = flow.promised.merge(by, pieces, Double::sum);
            if (Math.abs(now) <= ROUNDING) {
                flow.promised.remove(by);
            }
        }
    }
}
