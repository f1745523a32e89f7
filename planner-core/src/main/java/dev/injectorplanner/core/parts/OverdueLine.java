package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/**
 * An open order line that is past its day. It counts for nothing until somebody confirms a new day: a question for the
 * buyer.
 *
 * @param supplier who to ask
 * @param order the order's number
 * @param part part number
 * @param depot where it was to arrive
 * @param quantity pieces of the line
 * @param expectedOn the day it was confirmed for, else due on
 * @param daysLate days since then, above 0
 */
public record OverdueLine(
        String supplier,
        String order,
        String part,
        String depot,
        double quantity,
        LocalDate expectedOn,
        long daysLate) {

    /** All of a fleet, the latest first. */
    static List<OverdueLine> of(FleetIndex index, LocalDate today) {
        return index.fleet().purchaseLines().stream()
                .filter(line -> line.overdue(today))
                .map(line -> of(index, today, line))
                .sorted(Comparator.comparing(OverdueLine::expectedOn)
                        .thenComparing(OverdueLine::order)
                        .thenComparing(OverdueLine::part)
                        .thenComparing(OverdueLine::depot))
                .toList();
    }

    private static OverdueLine of(FleetIndex index, LocalDate today, PurchaseLine line) {
        return new OverdueLine(
                PurchaseLine.isTransfer(line.order())
                        ? "the depot that sent transfer " + line.order()
                        : index.findPart(line.part()).map(Part::supplier).orElse(OrderAdvice.NO_SUPPLIER),
                line.order(),
                line.part(),
                line.depot(),
                line.openQuantity(),
                line.expectedOn(),
                ChronoUnit.DAYS.between(line.expectedOn(), today));
    }

    /** What to ask: {@code Ask Calder Diesel Supply: line of 6, 11 days late}. */
    public String question() {
        return "Ask " + supplier + ": line of " + Figures.given(quantity) + ", "
                + Figures.count(daysLate, "day", "days") + " late";
    }
}
