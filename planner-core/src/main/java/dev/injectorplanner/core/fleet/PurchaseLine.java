package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A line of a purchase order.
 *
 * @param order the order's number
 * @param part part number
 * @param depot where it is to arrive
 * @param quantity how many were ordered, above 0
 * @param dueOn day it is promised for
 * @param receivedOn day it was complete or closed, or null while it is open
 * @param confirmedOn day the supplier confirmed last, or null where it confirmed none
 * @param received pieces that have come so far while it is open, 0 to {@code quantity}
 * @param price price of one as confirmed, or null where none was
 */
public record PurchaseLine(
        String order,
        String part,
        String depot,
        double quantity,
        LocalDate dueOn,
        @Nullable LocalDate receivedOn,
        @Nullable LocalDate confirmedOn,
        double received,
        @Nullable BigDecimal price) {
    /** Begins the numbers of transfers between depots, which stand among the order lines while they are on their way. */
    public static final String TRANSFER = "TR";

    public PurchaseLine {
        order = Require.name("order", order);
        part = Require.name("part", part);
        depot = Require.name("depot", depot);
        Require.positive("quantity", quantity);
        Require.within("quantity", quantity, 0, 10_000_000);
        Require.notNegative("received", received);
        if (received > quantity) {
            throw new InvalidValueException(
                    "received",
                    Require.plain(received),
                    "is more than the quantity of " + Require.plain(quantity),
                    "correct whichever is wrong; pieces beyond the order are a line of their own");
        }
        price = price == null ? null : Require.money("price", price);
    }

    /** A line of which nothing was confirmed and no part has come. */
    public PurchaseLine(
            String order, String part, String depot, double quantity, LocalDate dueOn, @Nullable LocalDate receivedOn) {
        this(order, part, depot, quantity, dueOn, receivedOn, null);
    }

    /** A line of which no part has come. */
    public PurchaseLine(
            String order,
            String part,
            String depot,
            double quantity,
            LocalDate dueOn,
            @Nullable LocalDate receivedOn,
            @Nullable LocalDate confirmedOn) {
        this(order, part, depot, quantity, dueOn, receivedOn, confirmedOn, 0, null);
    }

    /** Whether an order's number is that of a transfer between depots: no supplier can send it sooner. */
    public static boolean isTransfer(String order) {
        return order.startsWith(TRANSFER + "-");
    }

    /** Pieces still to come; 0 once it is complete or closed. */
    public double openQuantity() {
        return receivedOn == null ? quantity - received : 0;
    }

    /** The day it is expected: as confirmed, else as due. */
    public LocalDate expectedOn() {
        return confirmedOn == null ? dueOn : confirmedOn;
    }

    /** Open and past its day: it counts for nothing until a new day is confirmed. */
    public boolean overdue(LocalDate today) {
        return openQuantity() > 0 && expectedOn().isBefore(today);
    }
}
