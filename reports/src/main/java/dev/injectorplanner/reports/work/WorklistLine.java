package dev.injectorplanner.reports.work;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A truck on the worklist's sheet; null where something is not known.
 *
 * @param chance chance that its likeliest injector fails within 12 weeks, 0..1
 * @param cylinder that injector's cylinder
 * @param faults injector faults open
 * @param sinceKm km since that injector was fitted
 * @param odometerKm newest reading
 * @param engineHours newest reading
 * @param kmPerWeek usual km a week
 * @param visit week of its next visit
 * @param day day of its next visit
 * @param work what is done then, or empty
 * @param hours labour of that visit, h
 * @param state how the truck stands, in words
 */
public record WorklistLine(
        String truck,
        String depot,
        String dutyGroup,
        String family,
        String vin,
        @Nullable Double chance,
        @Nullable Integer cylinder,
        long faults,
        @Nullable Double sinceKm,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        @Nullable Double kmPerWeek,
        @Nullable String visit,
        @Nullable LocalDate day,
        String work,
        @Nullable Double hours,
        String state) {}
