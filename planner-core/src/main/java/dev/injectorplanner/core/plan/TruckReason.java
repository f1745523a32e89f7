package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.option.VisitReason;
import org.jspecify.annotations.Nullable;

/**
 * Why a truck comes in when it does, or not at all.
 *
 * @param truck the truck
 * @param week the week of its visit, or null where it has none
 * @param reason the figures behind the visit, or null where it has none
 * @param words the answer in words
 */
public record TruckReason(
        String truck, @Nullable IsoWeek week, @Nullable VisitReason reason, String words) {}
