package dev.injectorplanner.app.order;

import dev.injectorplanner.core.fleet.PurchaseLine;
import java.util.List;
import java.util.Optional;

/**
 * All there is about one order.
 *
 * @param head empty for orders that came from files
 * @param lines open and closed ones
 * @param events what happened, oldest first
 * @param problems what was short, wrong or damaged
 */
public record OrderFile(
        Optional<OrderHead> head, List<PurchaseLine> lines, List<OrderEvent> events, List<DeliveryProblem> problems) {
    public OrderFile {
        lines = List.copyOf(lines);
        events = List.copyOf(events);
        problems = List.copyOf(problems);
    }
}
