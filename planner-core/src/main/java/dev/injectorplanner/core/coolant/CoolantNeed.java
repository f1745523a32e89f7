package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.calendar.IsoWeek;

/**
 * Coolant of one visit.
 *
 * @param depot the depot
 * @param week the ISO week
 * @param truck the truck
 * @param capacityLitres what its system holds
 * @param drainedLitres what comes out
 * @param glycolPercent ethylene glycol of the refill, percent by volume
 * @param concentrateLitres concentrate to draw
 * @param waterLitres demineralised water to draw
 * @param wasteLitres old coolant to collect
 * @param reused whether the drained coolant goes back in
 */
public record CoolantNeed(
        String depot,
        IsoWeek week,
        String truck,
        double capacityLitres,
        double drainedLitres,
        double glycolPercent,
        double concentrateLitres,
        double waterLitres,
        double wasteLitres,
        boolean reused) {}
