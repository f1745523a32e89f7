package dev.injectorplanner.app.closeout;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A fitted injector's row when it comes out, and when that is taken back. */
final class Lives {
    private Lives() {}

    static FittedInjector ended(
            FittedInjector row, LocalDate on, @Nullable Double odometerKm, @Nullable Double hours, Found found) {
        return with(row, on, odometerKm, hours, found);
    }

    static FittedInjector goingOn(FittedInjector row) {
        return with(row, null, null, null, null);
    }

    private static FittedInjector with(
            FittedInjector row,
            @Nullable LocalDate on,
            @Nullable Double odometerKm,
            @Nullable Double hours,
            @Nullable Found found) {
        return new FittedInjector(
                row.truck(),
                row.cylinder(),
                row.part(),
                row.serial(),
                row.calibrationCode(),
                row.origin(),
                row.fittedOn(),
                row.odometerKm(),
                row.engineHours(),
                on,
                odometerKm,
                hours,
                found,
                row.fitting());
    }
}
