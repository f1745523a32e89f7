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
 */
public record PurchaseLine(
        String order,
        String part,
        String depot,
        double quantity,
        LocalDate dueOn,
        @Nullable LocalDate receivedOn) {
    public PurchaseLine {
        order = Require.name("order", order);
        part = Require.name("part", part);
        depot = Require.name("depot", depot);
        Require.positive("quantity", quantity);
        Require.within("quantity", quantity, 0, 10_000_000);
    }
}
