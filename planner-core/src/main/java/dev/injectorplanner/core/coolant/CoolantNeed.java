package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.calendar.IsoWeek;
import org.jspecify.annotations.Nullable;

/**
 * Coolant of one visit. Litres to four decimals.
 *
 * @param depot the depot
 * @param week the ISO week
 * @param truck the truck
 * @param capacityLitres what its system holds
 * @param drainedLitres what comes out
 * @param nowPercent ethylene glycol in it before, percent by volume: the family's, until a measurement says otherwise
 * @param targetPercent strength aimed at
 * @param mix what to pour, put back and collect, or null where nothing that is allowed can be mixed
 * @param remark why the target is not reached or nothing is mixed, with what would do it; empty where all is well
 */
public record CoolantNeed(
        String depot,
        IsoWeek week,
        String truck,
        double capacityLitres,
        double drainedLitres,
        double nowPercent,
        double targetPercent,
        @Nullable CoolantMix mix,
        String remark) {
    /** Concentrate to draw, litres; 0 where nothing is mixed. */
    public double concentrateLitres() {
        return mix == null ? 0 : mix.concentrateLitres();
    }

    /** Water to draw, litres; 0 where nothing is mixed. */
    public double waterLitres() {
        return mix == null ? 0 : mix.waterLitres();
    }

    /** Old coolant to collect, litres; all that is drained where nothing is mixed. */
    public double wasteLitres() {
        return mix == null ? drainedLitres : mix.wasteLitres();
    }

    /** The same, kg at 20 C. */
    public double wasteKg() {
        return mix == null ? drainedLitres * GlycolWater.kgPerLitre(nowPercent) : mix.wasteKg();
    }

    /** Drained coolant that goes back in, litres. */
    public double putBackLitres() {
        return mix == null ? 0 : mix.putBackLitres();
    }
}
