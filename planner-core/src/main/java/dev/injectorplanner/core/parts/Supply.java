package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What there is: stock, and open purchase lines by the day they are expected. */
final class Supply {
    private final FleetIndex index;
    private final LocalDate today;
    private final Map<DepotPartKey, Double> stock = new TreeMap<>();
    private final Map<DepotPartKey, List<PurchaseLine>> open = new TreeMap<>();

    Supply(FleetIndex index, LocalDate today) {
        this.index = index;
        this.today = today;
        for (StockLine line : index.fleet().stock()) {
            stock.put(new DepotPartKey(line.depot(), line.part()), line.onHand());
        }
        for (PurchaseLine line : index.fleet().purchaseLines()) {
            if (line.receivedOn() == null) {
                open.computeIfAbsent(new DepotPartKey(line.depot(), line.part()), shelf -> new ArrayList<>())
                        .add(line);
            }
        }
    }

    /** Every part at every depot of which there is a line of stock or an open purchase line. */
    Set<DepotPartKey> shelves() {
        Set<DepotPartKey> shelves = new TreeSet<>(stock.keySet());
        shelves.addAll(open.keySet());
        return shelves;
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
        for (PurchaseLine line : open.getOrDefault(shelf, List.of())) {
            LocalDate due = line.dueOn().isBefore(today) ? today.plusDays(PartNeeds.OVERDUE_DAYS) : line.dueOn();
            sum += due.isAfter(after) && !due.isAfter(until) ? line.quantity() : 0;
        }
        return sum;
    }

    /** The day on which a week's parts must be there: its Monday, or today in the week that has begun. */
    LocalDate readyDay(IsoWeek week) {
        return week.monday().isBefore(today) ? today : week.monday();
    }

    /** The day up to which arrivals count for the week before. */
    LocalDate dayBefore(IsoWeek week) {
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
