package dev.injectorplanner.app.order;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The head of an order of the site's own series.
 *
 * @param order its number
 * @param supplier who gets it
 * @param placedOn day it was placed
 * @param placedBy who placed it
 * @param note what the supplier is told beside the lines, or empty
 * @param splitFrom the order it was split from, or null
 * @param mailedTo address it was mailed to, or null
 */
public record OrderHead(
        String order,
        String supplier,
        LocalDate placedOn,
        String placedBy,
        String note,
        @Nullable String splitFrom,
        @Nullable String mailedTo) {}
