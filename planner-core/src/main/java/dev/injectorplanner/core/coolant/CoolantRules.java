package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.check.Require;
import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * How a site handles coolant.
 *
 * @param renew whether drained coolant is replaced rather than put back
 * @param protectToC temperature to protect to, degrees C, or null to keep each family's strength
 * @param anyStrength whether strengths outside 40 to 60 percent by volume are allowed
 * @param lostShare share of drained coolant that does not come back where it is reused
 * @param concentrateContainerLitres what a container of concentrate holds
 * @param waterContainerLitres what a container of water holds
 * @param wasteContainerLitres what a waste container takes
 * @param concentratePart part number under which a container of concentrate is ordered, or null for the only part of
 *     kind coolant in the parts table
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record CoolantRules(
        boolean renew,
        @Nullable Double protectToC,
        boolean anyStrength,
        double lostShare,
        double concentrateContainerLitres,
        double waterContainerLitres,
        double wasteContainerLitres,
        @Nullable String concentratePart)
        implements CoolantRulesBuilder.With {
    public CoolantRules {
        if (protectToC != null) {
            GlycolWater.percentFor(protectToC);
        }
        Require.within("lost_share", lostShare, 0, 1);
        Require.positive("concentrate_container_l", concentrateContainerLitres);
        Require.positive("water_container_l", waterContainerLitres);
        Require.positive("waste_container_l", wasteContainerLitres);
        if (concentratePart != null) {
            Require.text("concentrate_part", concentratePart);
        }
    }

    /** Rules that name no part for concentrate. */
    public CoolantRules(
            boolean renew,
            @Nullable Double protectToC,
            boolean anyStrength,
            double lostShare,
            double concentrateContainerLitres,
            double waterContainerLitres,
            double wasteContainerLitres) {
        this(
                renew,
                protectToC,
                anyStrength,
                lostShare,
                concentrateContainerLitres,
                waterContainerLitres,
                wasteContainerLitres,
                null);
    }

    /** Put back, each family's strength, a twentieth lost, 20 l cans of concentrate and water, 60 l waste drums. */
    public static CoolantRules standard() {
        return new CoolantRules(false, null, false, 0.05, 20, 20, 60);
    }
}
