package dev.injectorplanner.core.generate;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;

/**
 * Which fleet to make.
 *
 * @param catalogue what it is made of
 * @param seed the same seed gives the same fleet
 * @param trucks how many, 1 or more
 * @param today the day its history ends
 * @param historyDays days of readings, faults, tests and removals told; what happened before is unknown, as in life
 * @param readingEveryDays usual days between meter readings, 1 or more
 * @param replacedMeterShare share of trucks whose odometer was replaced within the history
 */
public record FleetSpec(
        Catalogue catalogue,
        long seed,
        int trucks,
        LocalDate today,
        int historyDays,
        double readingEveryDays,
        double replacedMeterShare) {
    public FleetSpec {
        Require.within("trucks", trucks, 1, 1_000_000);
        Require.within("history_days", historyDays, 30, 7_300);
        Require.within("reading_every_days", readingEveryDays, 1, 365);
        Require.within("replaced_meter_share", replacedMeterShare, 0, 1);
    }

    LocalDate historyStart() {
        return today.minusDays(historyDays);
    }
}
