package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line of the order list.
 *
 * @param supplier who sells it; lines of one supplier that are placed on one day go out together
 * @param part part number
 * @param description what it is
 * @param depot where it is to go
 * @param placeOn day to place it
 * @param orderBy last day on which it still comes in time at the longest lead time; before {@code placeOn} where it is late
 * @param thereBy day it comes at the latest when placed on {@code placeOn}
 * @param now whether it is placed today
 * @param forVisits pieces missing for planned visits
 * @param forReserve pieces missing for failures that no plan foresees
 * @param leftOver pieces that an earlier line's packs leave over for it
 * @param quantity pieces to order: what is missing, less what is left over, in whole packs, no less than the least order
 * @param pack pieces sold together
 * @param minimumOrder least order, pieces
 * @param price price of one
 * @param coreDeposit deposit of one
 * @param firstWeek first ISO week that needs it, or null where it is for the reserve alone
 * @param trucks trucks of the visits, in order
 * @param express whether it must come by express
 */
public record OrderLine(
        String supplier,
        String part,
        String description,
        String depot,
        LocalDate placeOn,
        LocalDate orderBy,
        LocalDate thereBy,
        boolean now,
        double forVisits,
        double forReserve,
        double leftOver,
        double quantity,
        int pack,
        int minimumOrder,
        BigDecimal price,
        BigDecimal coreDeposit,
        @Nullable IsoWeek firstWeek,
        List<String> trucks,
        boolean express) {
    /** By the day to place, then by supplier, part and depot. */
    public static final Comparator<OrderLine> BY_DAY = Comparator.comparing(OrderLine::placeOn)
            .thenComparing(OrderLine::supplier)
            .thenComparing(OrderLine::part)
            .thenComparing(OrderLine::depot)
            .thenComparing(line -> !line.express());

    public OrderLine {
        trucks = List.copyOf(trucks);
    }

    /** Price of the line, without deposits. */
    public BigDecimal value() {
        return price.multiply(BigDecimal.valueOf(quantity));
    }

    /** Deposits paid with it. */
    public BigDecimal deposits() {
        return coreDeposit.multiply(BigDecimal.valueOf(quantity));
    }

    /** Whether it comes too late at the longest lead time. */
    public boolean late() {
        return orderBy.isBefore(placeOn);
    }
}
