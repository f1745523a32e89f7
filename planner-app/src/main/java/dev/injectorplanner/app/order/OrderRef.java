package dev.injectorplanner.app.order;

import dev.injectorplanner.core.fleet.PurchaseLine;

/** One line of an order: its number, the part and the depot it goes to. */
public record OrderRef(String order, String part, String depot) {
    public static OrderRef of(PurchaseLine line) {
        return new OrderRef(line.order(), line.part(), line.depot());
    }

    /** {@code order PO-12, KV-8140 for Aldermoor}. */
    @Override
    public String toString() {
        return "order " + order + ", " + part + " for " + depot;
    }
}
