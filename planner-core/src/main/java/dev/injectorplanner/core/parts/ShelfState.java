package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.allocation.DepotPartKey;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One part at one depot, as the buyer looks at it: needed, there, on order, to order.
 *
 * @param depot the depot
 * @param part part number
 * @param needed pieces that planned visits require, and the safety stock
 * @param onHand pieces in stock today
 * @param onOrder pieces on open order lines that are not past their day
 * @param nextOn the day the next of those is expected, or null where none is
 * @param overdue pieces on lines past their day, which count for nothing
 * @param toOrder pieces advised, now and later
 */
public record ShelfState(
        String depot,
        String part,
        double needed,
        double onHand,
        double onOrder,
        @Nullable LocalDate nextOn,
        double overdue,
        double toOrder) {

    private static final class Sums {
        double needed;
        double onHand;
        double onOrder;
        double overdue;
        double toOrder;

        @Nullable
        LocalDate nextOn;
    }

    static List<ShelfState> of(
            FleetIndex index,
            LocalDate today,
            List<PartNeed> needs,
            List<UnplannedNeed> unplanned,
            List<OrderLine> orders) {
        Map<DepotPartKey, Sums> all = new TreeMap<>();
        needs.forEach(need -> at(all, need.depot(), need.part()).needed += need.required());
        unplanned.forEach(need -> at(all, need.depot(), need.part()).needed += need.target());
        orders.forEach(line -> at(all, line.depot(), line.part()).toOrder += line.quantity());
        for (StockLine line : index.fleet().stock()) {
            at(all, line.depot(), line.part()).onHand += line.onHand();
        }
        for (PurchaseLine line : index.fleet().purchaseLines()) {
            if (line.openQuantity() > 0) {
                add(at(all, line.depot(), line.part()), line, today);
            }
        }
        List<ShelfState> rows = new ArrayList<>();
        all.forEach((shelf, sums) -> rows.add(new ShelfState(
                shelf.depot(),
                shelf.part(),
                Figures.tidy(sums.needed),
                sums.onHand,
                sums.onOrder,
                sums.nextOn,
                sums.overdue,
                sums.toOrder)));
        return rows;
    }

    private static void add(Sums sums, PurchaseLine line, LocalDate today) {
        LocalDate day = line.expectedOn();
        if (line.overdue(today)) {
            sums.overdue += line.openQuantity();
        } else {
            sums.onOrder += line.openQuantity();
            sums.nextOn = sums.nextOn == null || day.isBefore(sums.nextOn) ? day : sums.nextOn;
        }
    }

    private static Sums at(Map<DepotPartKey, Sums> all, String depot, String part) {
        return all.computeIfAbsent(new DepotPartKey(depot, part), none -> new Sums());
    }
}
