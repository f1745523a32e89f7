package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * A line of the short list: a part that an order placed today may not bring in time, and the visit that will suffer.
 *
 * @param depot the depot
 * @param part part number
 * @param week the ISO week of the visit
 * @param truck its truck
 * @param missing pieces missing of its kit
 * @param chance chance that they will be needed: 1, or less where only breakable pieces are missing
 * @param usualArrival day an order placed today comes usually
 * @param latestArrival day it comes at the latest
 * @param advice the cheapest way out for the visit
 * @param moveTo the first week in which the parts are there whatever happens
 * @param movingCost what it costs to move the visit to that week
 * @param waitingCost the same, times the chance that it comes to that
 * @param expeditePrice what it costs to ship all that the visit misses
 * @param fromDepot the depot that sends them, or null where none does
 */
public record ShortLine(
        String depot,
        String part,
        IsoWeek week,
        String truck,
        double missing,
        double chance,
        LocalDate usualArrival,
        LocalDate latestArrival,
        ShortAdvice advice,
        IsoWeek moveTo,
        BigDecimal postponementCost,
        BigDecimal waitingCost,
        BigDecimal expeditePrice,
        @Nullable String fromDepot) {
    /** By week, then by depot, truck and part. */
    public static final Comparator<ShortLine> BY_WEEK = Comparator.comparing(ShortLine::week)
            .thenComparing(ShortLine::depot)
            .thenComparing(ShortLine::truck)
            .thenComparing(ShortLine::part);
}
