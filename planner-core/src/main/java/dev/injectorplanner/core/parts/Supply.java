package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.allocation.Incoming;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What there is: stock, and open purchase lines by the day they are expected. A line past its day counts for nothing until
 * somebody confirms a new one.
 */
final class Supply {
    private final FleetIndex index;
    private final LocalDate today;
    private final boolean shared;
    private final Map<DepotPartKey, Double> stock = new TreeMap<>();
    private final Map<DepotPartKey, List<Incoming>> open = new TreeMap<>();

    Supply(FleetIndex index, LocalDate today) {
        this(index, today, null);
    }

    /**
     * As a plan shares it: pieces of transfers lie where they go, and pieces of an order that an express shipment brings
     * sooner come with that.
     */
    Supply(FleetIndex index, LocalDate today, @Nullable Allocation allocation) {
        this.index = index;
        this.today = today;
        this.shared = allocation != null;
        for (StockLine line : index.fleet().stock()) {
            stock.put(new DepotPartKey(line.depot(), line.part()), line.onHand());
        }
        for (PurchaseLine line : index.fleet().purchaseLines()) {
            if (line.openQuantity() > 0 && !line.overdue(today)) {
                DepotPartKey shelf = new DepotPartKey(line.depot(), line.part());
                add(new Incoming(shelf, line.openQuantity(), line.expectedOn(), line.order()));
            }
        }
        if (allocation != null) {
            allocation.pieces().forEach(this::move);
        }
    }

    private void add(Incoming incoming) {
        open.computeIfAbsent(incoming.shelf(), none -> new ArrayList<>()).add(incoming);
    }

    private void move(AllocatedPieces pieces) {
        String giver = pieces.source() == PieceSource.TRANSFER ? pieces.fromDepot() : pieces.depot();
        boolean moves = pieces.source() == PieceSource.TRANSFER || pieces.sooner();
        if (!moves || giver == null) {
            return;
        }
        DepotPartKey from = new DepotPartKey(giver, pieces.part());
        String order = pieces.order();
        if (order == null) {
            stock.computeIfPresent(
                    from, (shelf, there) -> there - pieces.quantity()); // others' depots are not ours to count
        } else {
            open.getOrDefault(from, new ArrayList<>())
                    .replaceAll(each -> order.equals(each.order()) ? less(each, pieces.quantity()) : each);
        }
        // without its order, so that what was moved is not taken for the rest of the line
        add(new Incoming(new DepotPartKey(pieces.depot(), pieces.part()), pieces.quantity(), pieces.readyOn(), null));
    }

    private static Incoming less(Incoming each, double pieces) {
        return new Incoming(each.shelf(), Figures.tidy(Math.max(0, each.pieces() - pieces)), each.on(), each.order());
    }

    /** Every part at every depot of which there is a line of stock or an open purchase line. */
    Set<DepotPartKey> shelves() {
        Set<DepotPartKey> shelves = new TreeSet<>(stock.keySet());
        shelves.addAll(open.keySet());
        return shelves;
    }

    /** All of it piece by piece, for who shares it out. */
    List<Incoming> incoming() {
        List<Incoming> all = new ArrayList<>();
        stock.forEach((shelf, pieces) -> all.add(new Incoming(shelf, pieces, today, null)));
        open.values().forEach(all::addAll);
        for (StockLine line : index.fleet().spares()) {
            all.add(new Incoming(new DepotPartKey(line.depot(), line.part()), line.onHand(), today, null));
        }
        return all;
    }

    double onHand(DepotPartKey shelf) {
        return stock.getOrDefault(shelf, 0.0);
    }

    /** Stock and all that is expected on or before a day. */
    double until(DepotPartKey shelf, LocalDate day) {
        return onHand(shelf) + arriving(shelf, LocalDate.MIN, day);
    }

    /** Pieces expected after one day and on or before another. */
    double arriving(DepotPartKey shelf, LocalDate after, LocalDate until) {
        double sum = 0;
        for (Incoming line : open.getOrDefault(shelf, List.of())) {
            sum += line.on().isAfter(after) && !line.on().isAfter(until) ? line.pieces() : 0;
        }
        return sum;
    }

    /** The day on which a week's parts must be there: its Monday, or today in the week that has begun. */
    LocalDate readyDay(IsoWeek week) {
        return week.monday().isBefore(today) ? today : week.monday();
    }

    /** The day up to which arrivals count for a week's visits: as shared they may start when their kit is there. */
    LocalDate countedUntil(IsoWeek week) {
        return shared ? week.sunday() : readyDay(week);
    }

    /** The day up to which arrivals count for the week before. */
    LocalDate dayBefore(IsoWeek week) {
        if (shared) {
            return week.sunday().minusWeeks(1);
        }
        LocalDate earlier = week.monday().minusWeeks(1);
        return week.monday().isAfter(today) && earlier.isBefore(today) ? today : earlier;
    }

    /** The day an order placed today comes at the latest; of a part that is not in the table, today. */
    LocalDate latestArrival(String part) {
        return today.plusDays(index.findPart(part).map(Part::leadDaysMax).orElse(0));
    }

    /** The last day to order so that a part is there on a day; of a part that is not in the table, today. */
    LocalDate orderBy(String part, LocalDate day) {
        return index.findPart(part)
                .map(known -> day.minusDays(known.leadDaysMax()))
                .orElse(today);
    }
}
