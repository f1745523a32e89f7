package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Injectors that were replaced in one job: it ends the old ones' lives and begins the new ones'. It is kept as
 * {@link FittedInjector}s, not in itself.
 *
 * @param truck the truck
 * @param cylinders which cylinders
 * @param doneOn the day
 * @param odometerKm odometer that day, km, or null
 * @param engineHours engine hours that day, or null
 * @param part part number of the new ones; null: the family's injector
 * @param origin of the new ones; null: unknown
 * @param serials serials of the new ones, one a cylinder in their order, or none
 * @param codes calibration codes of the new ones, one a cylinder in their order, or none
 * @param found what was found of the old ones, or null
 */
public record Replacement(
        String truck,
        CylinderPick cylinders,
        LocalDate doneOn,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        @Nullable String part,
        @Nullable Origin origin,
        List<String> serials,
        List<String> codes,
        @Nullable Found found) {
    public Replacement {
        truck = Require.name("truck", truck);
        Require.optionalNotNegative("odometer", odometerKm);
        Require.optionalNotNegative("engine_hours", engineHours);
        part = Require.optionalName("part", part);
        serials = serials.stream().map(each -> Require.name("serial", each)).toList();
        codes = codes.stream().map(each -> Require.name("code", each)).toList();
    }
}
