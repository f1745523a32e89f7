package dev.injectorplanner.app.web.stock;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.parts.StockWeek;
import dev.injectorplanner.core.parts.UnplannedNeed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One part at one depot or at several together: what is there now, what the plan does with it.
 *
 * @param onHand pieces in stock now
 * @param allocated of those, pieces that the plan gives to visits
 * @param onOrder pieces on open order lines that are not late
 * @param overdue pieces on late ones
 * @param nextOn day the next of them is expected, or null
 * @param safety pieces kept for failures nobody planned
 * @param weeks the plan's weeks in order
 */
record Shelf(
        String part,
        double onHand,
        double allocated,
        double onOrder,
        double overdue,
        @Nullable LocalDate nextOn,
        double safety,
        List<Week> weeks) {
    Shelf {
        weeks = List.copyOf(weeks);
    }

    /**
     * A week.
     *
     * @param start pieces before it
     * @param arriving pieces that open orders bring by its visits
     * @param required pieces its visits are to have
     * @param end pieces left, below 0 where it is short; advised orders that nobody placed do not count
     */
    record Week(IsoWeek week, double start, double arriving, double required, double end) {}

    double free() {
        return onHand - allocated;
    }

    /** The first week in which pieces are missing; empty where none is. */
    Optional<Week> shortage() {
        return weeks.stream().filter(week -> week.end() < -1e-9).findFirst();
    }

    /** Every part at the depots of these plans, by name. */
    static Map<String, Shelf> of(List<DepotPlan> plans) {
        Map<String, Sums> sums = new TreeMap<>();
        plans.forEach(plan -> add(sums, plan));
        Map<String, Shelf> shelves = new TreeMap<>();
        sums.forEach((part, sum) -> shelves.put(part, sum.shelf(part)));
        return shelves;
    }

    private static void add(Map<String, Sums> all, DepotPlan plan) {
        String depot = plan.depot();
        for (StockLine line : plan.fleet().fleet().stock()) {
            if (line.depot().equals(depot)) {
                at(all, line.part()).onHand += line.onHand();
            }
        }
        for (PurchaseLine line : plan.fleet().fleet().purchaseLines()) {
            if (line.depot().equals(depot) && line.openQuantity() > 0) {
                at(all, line.part()).order(line, plan.today());
            }
        }
        for (AllocatedPieces pieces : plan.plan().parts().allocation().pieces()) {
            if (pieces.depot().equals(depot) && pieces.source() == PieceSource.SHELF && !plan.isDone(pieces.truck())) {
                at(all, pieces.part()).allocated += pieces.quantity();
            }
        }
        for (UnplannedNeed need : plan.plan().parts().unplannedNeeds()) {
            if (need.depot().equals(depot)) {
                at(all, need.part()).safety += need.target();
            }
        }
        for (StockWeek week : plan.plan().parts().stockWeeks()) {
            if (week.depot().equals(depot)) {
                at(all, week.part()).week(week);
            }
        }
    }

    private static Sums at(Map<String, Sums> all, String part) {
        return all.computeIfAbsent(part, none -> new Sums());
    }

    private static final class Sums {
        double onHand;
        double allocated;
        double onOrder;
        double overdue;
        double safety;

        @Nullable
        LocalDate nextOn;

        final Map<IsoWeek, double[]> weeks = new TreeMap<>();

        void order(PurchaseLine line, LocalDate today) {
            if (line.overdue(today)) {
                overdue += line.openQuantity();
                return;
            }
            onOrder += line.openQuantity();
            nextOn = nextOn == null || line.expectedOn().isBefore(nextOn) ? line.expectedOn() : nextOn;
        }

        void week(StockWeek week) {
            double[] sums = weeks.computeIfAbsent(week.week(), none -> new double[2]);
            sums[0] += week.arriving();
            sums[1] += week.required();
        }

        Shelf shelf(String part) {
            List<Week> rows = new ArrayList<>();
            double[] left = {onHand};
            weeks.forEach((week, sums) -> {
                double end = left[0] + sums[0] - sums[1];
                rows.add(new Week(week, left[0], sums[0], sums[1], end));
                left[0] = end;
            });
            return new Shelf(part, onHand, allocated, onOrder, overdue, nextOn, safety, rows);
        }
    }
}
