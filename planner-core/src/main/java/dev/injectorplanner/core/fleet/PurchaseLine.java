package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A line of a purchase order.
 *
 * @param order the order's number
 * @param part part number
 * @param depot where it is to arrive
 * @param quantity how many, above 0
 * @param dueOn day it is promised for
 * @param receivedOn day it came, or null while it is open
 * @param confirmedOn day the supplier confirmed last, or null where it confirmed none
 */
public record PurchaseLine(
        String order,
        String part,
        String depot,
        double quantity,
        LocalDate dueOn,
        @Nullable LocalDate receivedOn,
        @Nullable LocalDate confirmedOn) {
    public PurchaseLine {
        order = Require.name("order", order);
        part = Require.name("part", part);
        depot = Require.name("depot", depot);
        Require.positive("quantity", quantity);
        Require.within("quantity", quantity, 0, 10_000_000);
    }

    /** A line of which the supplier has confirmed no other day than it is due on. */
    public PurchaseLine(
            String order, String part, String depot, double quantity, LocalDate dueOn, @Nullable LocalDate receivedOn) {
        this(order, part, depot, quantity, dueOn, receivedOn, null);
    }

    /** The day it is expected: as confirmed, else as due. */
    public LocalDate expectedOn() {
        return confirmedOn == null ? dueOn : confirmedOn;
    }

    /** Open and past its day: it counts for nothing until a new day is confirmed. */
    public boolean overdue(LocalDate today) {
        return receivedOn == null && expectedOn().isBefore(today);
    }
}
