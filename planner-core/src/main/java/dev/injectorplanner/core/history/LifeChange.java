package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Injectors of one part and origin, fitted within a stretch of time, that fail sooner than those fitted before it.
 *
 * @param part part number
 * @param supplier its supplier; empty where the tables name none
 * @param origin new or reman
 * @param fittedFrom first day of fitting, the first of a quarter
 * @param fittedBefore the day after the last one: of a single bad batch; null where it goes on
 * @param fitted injectors fitted in that time
 * @param failures those that failed or were found worn
 * @param expected failures to be expected of them by the life of those fitted before
 * @param noticedOn the day by which the failures had said enough
 */
public record LifeChange(
        String part,
        String supplier,
        Origin origin,
        LocalDate fittedFrom,
        @Nullable LocalDate fittedBefore,
        int fitted,
        int failures,
        double expected,
        LocalDate noticedOn) {
    /** Whether a unit fitted on a day is one of them. */
    public boolean covers(LocalDate fittedOn) {
        return !fittedOn.isBefore(fittedFrom) && (fittedBefore == null || fittedOn.isBefore(fittedBefore));
    }

    /** Whether what is fitted now is of the same kind. */
    public boolean goesOn() {
        return fittedBefore == null;
    }

    /** {@code KV-8140 new, fitted since 2026-01-01: 11 of 286 failed or were found worn, 2.8 expected}. */
    public String words() {
        LocalDate before = fittedBefore;
        return part + " " + origin.name().toLowerCase(Locale.ROOT) + ", fitted "
                + (before == null ? "since " + fittedFrom : "from " + fittedFrom + " to " + before.minusDays(1)) + ": "
                + failures + " of " + fitted + " failed or were found worn, " + Figures.tenths(expected) + " expected";
    }
}
