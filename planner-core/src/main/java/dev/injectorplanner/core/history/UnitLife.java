package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One injector's life as far as it was observed.
 *
 * @param truck the truck
 * @param cylinder its cylinder
 * @param part part number
 * @param origin new or reman
 * @param fittedOn day it went in
 * @param observedFrom first day of observation: of fitting, or of the truck's first readings where that is later
 * @param exitOn day observation ended: of removal, today, or the truck's last day
 * @param end how it ended
 * @param km ages in km, or null where the meters cannot say
 * @param hours ages in engine hours, or null where the meters cannot say
 */
public record UnitLife(
        String truck,
        int cylinder,
        String part,
        Origin origin,
        LocalDate fittedOn,
        LocalDate observedFrom,
        LocalDate exitOn,
        LifeEnd end,
        @Nullable Span km,
        @Nullable Span hours) {
    /** The observed stretch on a clock, or null where the meters cannot say. */
    public @Nullable Span on(Clock clock) {
        return clock == Clock.DISTANCE ? km : hours;
    }

    /**
     * Whether its life is known beyond its removal: found worn it would have failed, found healthy it would have run on,
     * when what a defect's delay leaves after it is found was over.
     */
    public boolean knownBeyondExit() {
        return end == LifeEnd.WORN || end == LifeEnd.HEALTHY;
    }

    /** Whether it failed, or was found with the defect of which it would have failed. */
    public boolean failedOrWould() {
        return end == LifeEnd.FAILED || end == LifeEnd.WORN;
    }
}
