package dev.injectorplanner.core.risk;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * By when a truck's injectors should be tested.
 *
 * @param truck the truck
 * @param lastTestOn day of its last test of all injectors, or null where there was none
 * @param sinceKm km since that test; without one, since its oldest injector was fitted
 * @param chanceNow chance that a defect nobody saw has failed on the road since then, 0..1
 * @param by the day that chance passes the limit; in the past where it has
 * @param estimated whether delay, sensitivity and silent share are all fitted to records
 */
public record TruckInspection(
        String truck,
        @Nullable LocalDate lastTestOn,
        double sinceKm,
        double chanceNow,
        LocalDate by,
        boolean estimated) {}
