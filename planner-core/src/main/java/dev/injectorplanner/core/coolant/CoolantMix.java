package dev.injectorplanner.core.coolant;

import org.jspecify.annotations.Nullable;

/**
 * Coolant of one filling. In the block before and poured together are what is in the block after and the waste.
 *
 * @param capacityLitres what the system holds
 * @param drainedLitres what comes out
 * @param nowPercent glycol before, percent by volume
 * @param concentrateLitres concentrate to pour
 * @param waterLitres demineralised water to pour
 * @param putBackLitres drained coolant that goes back in
 * @param wasteLitres old coolant to collect: drained, less what goes back in
 * @param wasteKg the same at 20 C
 * @param afterPercent glycol after, percent by volume
 * @param freezingPointC freezing point after, or null beyond the published curves
 */
public record CoolantMix(
        double capacityLitres,
        double drainedLitres,
        double nowPercent,
        double concentrateLitres,
        double waterLitres,
        double putBackLitres,
        double wasteLitres,
        double wasteKg,
        double afterPercent,
        @Nullable Double freezingPointC) {
    /** Concentrate and water together, litres. */
    public double pouredLitres() {
        return concentrateLitres + waterLitres;
    }
}
