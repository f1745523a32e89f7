package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.due.DueItem;
import java.util.List;

/**
 * Something due that no visit of the plan answers: of a truck that could not be placed, or left for later by its visit. A
 * truck has a row for each reason.
 *
 * @param truck the truck
 * @param depot its depot
 * @param dueItems what is due
 * @param reason why no visit answers it
 */
public record Unplanned(String truck, String depot, List<DueItem> dueItems, String reason) {
    public Unplanned {
        dueItems = List.copyOf(dueItems);
    }
}
