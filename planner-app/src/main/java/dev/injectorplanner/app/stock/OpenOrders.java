package dev.injectorplanner.app.stock;

import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.time.LocalDate;
import java.util.List;

/** Order lines that are still open, within one transaction. */
public final class OpenOrders {
    private final StoreWriter writer;

    public OpenOrders(StoreWriter writer) {
        this.writer = writer;
    }

    /**
     * An open line.
     *
     * @throws RefusedEntryException where there is none, or it is complete
     */
    public PurchaseLine line(String order, String part, String depot) {
        PurchaseLine line = anyLine(order, part, depot);
        if (line.openQuantity() <= 0) {
            throw RefusedEntryException.of(
                    "order",
                    "order " + order + ", " + part + ": was complete or closed on " + line.receivedOn(),
                    "choose an open line, or receive the pieces without an order");
        }
        return line;
    }

    /** A line, open or not. */
    public PurchaseLine anyLine(String order, String part, String depot) {
        return writer.all(PurchaseLine.class).stream()
                .filter(each -> each.order().equals(order)
                        && each.part().equals(part)
                        && each.depot().equals(depot))
                .findFirst()
                .orElseThrow(() -> RefusedEntryException.of(
                        "order",
                        "order " + order + " has no line of " + part + " for " + depot,
                        "open the orders again and choose another line"));
    }

    /**
     * Books pieces that came against a line; the line is complete with its last piece.
     *
     * @return the line as it is now
     * @throws RefusedEntryException where more came than is open
     */
    public PurchaseLine receive(PurchaseLine line, double pieces, LocalDate day) {
        requireOpen(line, pieces, "came");
        double received = Math.min(line.quantity(), line.received() + pieces);
        boolean complete = received >= line.quantity() - 1e-9;
        return keep(new PurchaseLine(
                line.order(),
                line.part(),
                line.depot(),
                line.quantity(),
                line.dueOn(),
                complete ? day : null,
                line.confirmedOn(),
                received,
                line.price()));
    }

    /** Refuses more pieces than are open. */
    public static void requireOpen(PurchaseLine line, double pieces, String what) {
        if (!(pieces > 0)) {
            throw RefusedEntryException.of("pieces", "pieces: must be above zero", "enter how many " + what);
        }
        if (pieces > line.openQuantity() + 1e-9) {
            throw RefusedEntryException.of(
                    "pieces",
                    "order " + line.order() + ", " + line.part() + ": " + Require.plain(pieces) + " " + what + ", "
                            + Require.plain(line.openQuantity()) + " are open",
                    "receive the open ones against the line, the rest without an order");
        }
    }

    /** Writes a line in the place of the one with its order, part and depot. */
    public PurchaseLine keep(PurchaseLine line) {
        writer.merge(PurchaseLine.class, List.of(line), true);
        return line;
    }
}
