package dev.injectorplanner.core.usage;

import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Age of one fitted injector.
 *
 * @param truck the truck
 * @param cylinder its cylinder
 * @param part its part number
 * @param origin new or reman
 * @param serial its serial, or null
 * @param fittedOn day it went in; where nobody knows, the first day of the truck's records, by which it was in
 * @param months whole months since then
 * @param km km since then, or null where neither meters nor usage tell; where the day is not known, {@link UnknownAge#expected}
 * @param hours engine hours since then, likewise
 * @param kmPerWeek usage of its truck, km a week, 0 or more
 * @param hoursPerWeek usage of its truck, engine hours a week, 0 or more
 * @param dayUnknown whether nobody knows when it went in
 * @param leastKm lower bound of its km where that is not known; else null, as where the meters cannot say
 */
public record InjectorAge(
        String truck,
        int cylinder,
        String part,
        Origin origin,
        @Nullable String serial,
        LocalDate fittedOn,
        int months,
        @Nullable Double km,
        @Nullable Double hours,
        double kmPerWeek,
        double hoursPerWeek,
        boolean dayUnknown,
        @Nullable Double leastKm) {
    /** Whether it is known when it went in. */
    public boolean fittingKnown() {
        return !dayUnknown;
    }

    /** Since when it is in, in words: {@code since fitting on 2026-01-05}, or that its day is not known. */
    public String sinceWords() {
        return fittingKnown()
                ? "since fitting on " + fittedOn
                : "by the truck's meters, fitted before the records began";
    }

    /** Km since fitting, {@code weeks} ahead; null where today's is not known. */
    public @Nullable Double kmIn(double weeks) {
        return km == null ? null : Double.valueOf(km + weeks * kmPerWeek);
    }

    /** Engine hours since fitting, {@code weeks} ahead; null where today's are not known. */
    public @Nullable Double hoursIn(double weeks) {
        return hours == null ? null : Double.valueOf(hours + weeks * hoursPerWeek);
    }
}
