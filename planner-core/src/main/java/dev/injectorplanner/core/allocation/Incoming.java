package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Pieces that are there or will be.
 *
 * @param shelf depot and part
 * @param pieces how many, 0 or more
 * @param on the day they can be used, today for those on the shelf
 * @param order the purchase order they come with, or null for those on the shelf
 */
public record Incoming(
        DepotPartKey shelf,
        double pieces,
        LocalDate on,
        @Nullable String order) {
    public Incoming {
        Require.notNegative("pieces", pieces);
    }
}
