package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.fleet.PurchaseLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Turns promises into pieces: of each shelf those that are needed first take what is there first. Kits that an ordinary
 * order reaches in time take what is left, and order the rest. Whatever would be bought first takes pieces that are on
 * order for a later day and that nobody waits for: the supplier is asked to send those sooner, so that nothing is bought
 * twice.
 */
final class PieceAssignment {
    private final Sourcing sourcing;
    private final StockLedger ledger;
    private final Map<DepotPartKey, List<Left>> left = new HashMap<>();
    private final Map<DepotPartKey, List<Take>> takes = new TreeMap<>();
    private final List<AllocatedPieces> pieces = new ArrayList<>();
    private final List<Shipment> shipments = new ArrayList<>();
    private final List<Ordered> ordered = new ArrayList<>();

    private static final class Left {
        final Incoming incoming;
        double pieces;

        Left(Incoming incoming) {
            this.incoming = incoming;
            this.pieces = incoming.pieces();
        }
    }

    private record Ordered(KitNeed need, String part, double pieces, LocalDate ready) {}

    /** Pieces promised from a shelf; with a route they go to another depot. */
    private record Take(KitNeed need, LocalDate by, double pieces, Sourcing.@Nullable Route route) {}

    PieceAssignment(Sourcing sourcing, List<Incoming> incoming, StockLedger ledger) {
        this.sourcing = sourcing;
        this.ledger = ledger;
        incoming.stream()
                .sorted(StockLedger.BY_DAY)
                .forEach(each -> left.computeIfAbsent(each.shelf(), none -> new ArrayList<>())
                        .add(new Left(each)));
    }

    /** @param served kits by the day on which they are needed */
    Allocation of(List<KitHold> served, List<KitNeed> unmet) {
        for (KitHold hold : served) {
            hold.local.forEach((part, count) -> take(hold.own(part), hold.need, hold.need.by(), count, null));
            hold.ways.forEach(way -> send(hold.need, way));
        }
        served.forEach(hold -> orderable(hold.need));
        takes.forEach(this::assign);
        served.forEach(hold -> hold.ways.stream()
                .filter(way -> way.route() == null)
                .forEach(way -> way.pieces()
                        .forEach((part, count) ->
                                bought(hold.need, part, count, PieceSource.EXPRESS, sourcing.expressOn()))));
        ordered.forEach(each -> bought(each.need, each.part, each.pieces, PieceSource.ORDINARY_ORDER, each.ready));
        served.forEach(hold -> hold.ways.forEach(way -> shipments.add(shipment(hold.need, way))));
        pieces.sort(AllocatedPieces.BY_VISIT);
        shipments.sort(Shipment.BY_DAY);
        return new Allocation(pieces, shipments, unmet);
    }

    private void take(DepotPartKey shelf, KitNeed need, LocalDate by, double count, Sourcing.@Nullable Route route) {
        takes.computeIfAbsent(shelf, none -> new ArrayList<>()).add(new Take(need, by, count, route));
    }

    private void send(KitNeed need, KitHold.Way way) {
        Sourcing.Route route = way.route();
        if (route != null) {
            LocalDate sendBy = KitHold.sendBy(need.by(), route);
            way.pieces()
                    .forEach((part, count) -> take(new DepotPartKey(route.from(), part), need, sendBy, count, route));
        }
    }

    /** Sent as soon as all of its pieces are there. */
    private Shipment shipment(KitNeed need, KitHold.Way way) {
        Sourcing.Route route = way.route();
        LocalDate ready = sourcing.expressOn();
        if (route != null) {
            ready = pieces.stream()
                    .filter(each ->
                            each.truck().equals(need.truck()) && each.week().equals(need.week()))
                    .filter(each -> route.from().equals(each.fromDepot())
                            && way.pieces().containsKey(each.part()))
                    .map(AllocatedPieces::readyOn)
                    .max(LocalDate::compareTo)
                    .orElse(need.by());
        }
        return new Shipment(
                route == null ? PieceSource.EXPRESS : PieceSource.TRANSFER,
                route == null ? way.supplier() : route.from(),
                need.depot(),
                need.truck(),
                need.week(),
                route == null ? sourcing.today() : ready.minusDays(route.days()),
                ready,
                way.cost(),
                way.pieces());
    }

    /** Parts that can be ordered in time take what nobody was promised, and are ordered else. */
    private void orderable(KitNeed need) {
        need.pieces().forEach((part, count) -> {
            if (count > StockLedger.ROUNDING && sourcing.canOrder(part, need.by())) {
                DepotPartKey shelf = new DepotPartKey(need.depot(), part);
                double own = Math.min(count, ledger.available(shelf, need.by()));
                if (own > StockLedger.ROUNDING) {
                    ledger.promise(shelf, need.by(), own);
                    take(shelf, need, need.by(), own, null);
                }
                if (count - own > StockLedger.ROUNDING) {
                    LocalDate comes = sourcing.orderedOn(part);
                    LocalDate monday = need.week().monday();
                    ordered.add(new Ordered(need, part, count - own, comes.isBefore(monday) ? monday : comes));
                }
            }
        });
    }

    private void assign(DepotPartKey shelf, List<Take> those) {
        those.sort(Comparator.comparing(Take::by)
                .thenComparing(take -> take.need().week())
                .thenComparing(take -> take.need().truck()));
        List<Left> there = left.getOrDefault(shelf, List.of());
        for (Take take : those) {
            double open = take.pieces();
            for (Left each : there) {
                double count = Math.min(open, each.pieces);
                if (count > StockLedger.ROUNDING && !each.incoming.on().isAfter(take.by())) {
                    each.pieces -= count;
                    open -= count;
                    given(shelf, take, each.incoming, count);
                }
            }
            if (open > 1e-6) {
                throw new IllegalStateException("shelf " + shelf + " promised more than it has for truck "
                        + take.need().truck() + ": " + open + " missing");
            }
        }
    }

    private void given(DepotPartKey shelf, Take take, Incoming from, double count) {
        Sourcing.Route route = take.route();
        LocalDate there = from.on().isBefore(sourcing.today()) ? sourcing.today() : from.on();
        if (route != null) {
            add(
                    take.need(),
                    shelf.part(),
                    count,
                    PieceSource.TRANSFER,
                    route.from(),
                    from.order(),
                    there.plusDays(route.days()));
        } else {
            PieceSource source = from.order() == null ? PieceSource.SHELF : PieceSource.ORDER;
            add(take.need(), shelf.part(), count, source, null, from.order(), there);
        }
    }

    private void bought(KitNeed need, String part, double count, PieceSource source, LocalDate ready) {
        double open = count;
        for (Left each : left.getOrDefault(new DepotPartKey(need.depot(), part), List.of())) {
            double sooner = Math.min(open, each.pieces);
            String order = each.incoming.order();
            if (sooner > StockLedger.ROUNDING && order != null && !PurchaseLine.isTransfer(order)) {
                each.pieces -= sooner;
                open -= sooner;
                add(need, part, sooner, source, null, order, ready);
            }
        }
        if (open > StockLedger.ROUNDING) {
            add(need, part, open, source, null, null, ready);
        }
    }

    private void add(
            KitNeed need,
            String part,
            double count,
            PieceSource source,
            @Nullable String fromDepot,
            @Nullable String order,
            LocalDate readyOn) {
        pieces.add(new AllocatedPieces(
                need.truck(), need.depot(), need.week(), part, tidy(count), source, fromDepot, order, readyOn));
    }

    private static double tidy(double count) {
        return Math.rint(count * 1e6) / 1e6;
    }
}
