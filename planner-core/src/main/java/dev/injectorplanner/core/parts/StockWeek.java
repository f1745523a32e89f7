package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;

/**
 * One part on one depot's shelf in one week, if the order list is followed.
 *
 * @param depot the depot
 * @param part part number
 * @param week the ISO week
 * @param start pieces at the end of the week before
 * @param arriving pieces of open purchase lines, and of transfers to the depot, that come by its end
 * @param ordered pieces of advised orders that come by then at the longest lead time, or by express
 * @param required pieces to have for its visits
 * @param end pieces left; below 0 where the short list names a visit that will suffer
 */
public record StockWeek(
        String depot,
        String part,
        IsoWeek week,
        double start,
        double arriving,
        double ordered,
        double required,
        double end) {}
