package dev.injectorplanner.core.cores;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * An old unit owed to a supplier for its deposit.
 *
 * @param depot depot of the truck
 * @param truck the truck
 * @param cylinder the cylinder
 * @param part the reman part that was fitted
 * @param supplier who wants the old unit
 * @param fittedOn day it was fitted, from which the days count
 * @param fitting which of that cylinder's fittings of that day, from 1
 * @param oldSerial serial of the unit that came out, or null where unknown
 * @param deposit deposit at stake
 * @param lastDay last day to send it
 * @param daysLeft days from today to that day, below 0 where it has passed
 * @param state how urgent it is
 */
public record CoreOwed(
        String depot,
        String truck,
        int cylinder,
        String part,
        String supplier,
        LocalDate fittedOn,
        int fitting,
        @Nullable String oldSerial,
        BigDecimal deposit,
        LocalDate lastDay,
        int daysLeft,
        CoreState state) {
    public CoreOwed {
        fitting = Math.max(1, fitting); // plans kept before there were several a day have none
    }

    /** By the last day, then by truck and cylinder. */
    public static final Comparator<CoreOwed> MOST_URGENT = Comparator.comparing(CoreOwed::lastDay)
            .thenComparing(CoreOwed::truck)
            .thenComparing(CoreOwed::cylinder)
            .thenComparing(CoreOwed::fitting);
}
