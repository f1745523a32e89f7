package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;

/**
 * A day on which a depot has other hours or bays than usual: a holiday, leave, extra hands.
 *
 * @param labourHours hours for planned work that day, 0 when closed
 * @param bays bays that day, 0 when closed
 */
public record CapacityOverride(String depot, LocalDate date, double labourHours, int bays) {
    public CapacityOverride {
        depot = Require.name("depot", depot);
        Require.within("labour_hours", labourHours, 0, 4_800);
        Require.within("bays", bays, 0, 200);
    }
}
