package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One serial in one cylinder from one day to another.
 *
 * @param truck the truck
 * @param cylinder number as the engine maker counts
 * @param part its part number
 * @param serial the unit's serial, or null where unknown
 * @param calibrationCode the code that goes into the engine controller under its cylinder, or null
 * @param origin new or reman
 * @param fittedOn day it went in
 * @param odometerKm odometer that day, km, or null
 * @param engineHours engine hours that day, or null
 * @param removedOn day it came out, or null while it is in
 * @param removedOdometerKm odometer when it came out, km, or null
 * @param removedEngineHours engine hours when it came out, or null
 * @param found what was found then, or null while it is in
 */
public record FittedInjector(
        String truck,
        int cylinder,
        String part,
        @Nullable String serial,
        @Nullable String calibrationCode,
        Origin origin,
        LocalDate fittedOn,
        @Nullable Double odometerKm,
        @Nullable Double engineHours,
        @Nullable LocalDate removedOn,
        @Nullable Double removedOdometerKm,
        @Nullable Double removedEngineHours,
        @Nullable Found found) {
    public FittedInjector {
        truck = Require.name("truck", truck);
        Require.within("cylinder", cylinder, 1, EngineFamily.MOST_CYLINDERS);
        part = Require.name("part", part);
        serial = Require.optionalName("serial", serial);
        calibrationCode = Require.optionalName("calibration_code", calibrationCode);
        Require.optionalNotNegative("odometer", odometerKm);
        Require.optionalNotNegative("engine_hours", engineHours);
        Require.optionalNotNegative("removed_odometer", removedOdometerKm);
        Require.optionalNotNegative("removed_engine_hours", removedEngineHours);
        if (removedOn == null) {
            nothingWithoutRemoval(removedOdometerKm, removedEngineHours, found);
        } else if (removedOn.isBefore(fittedOn)) {
            throw new InvalidValueException(
                    "removed_on", removedOn, "is before fitted_on " + fittedOn, "correct whichever is wrong");
        }
    }

    private static void nothingWithoutRemoval(
            @Nullable Double removedOdometerKm, @Nullable Double removedEngineHours, @Nullable Found found) {
        Object stray =
                removedOdometerKm != null ? removedOdometerKm : removedEngineHours != null ? removedEngineHours : found;
        if (stray != null) {
            throw new InvalidValueException(
                    "removed_on",
                    "",
                    "is empty, but other removal columns are filled (" + stray + ")",
                    "enter removed_on, or clear the other removed columns and found");
        }
    }

    /** Whether it is in the engine on a day: from the day it went in until the day before it came out. */
    public boolean fittedAt(LocalDate day) {
        return !day.isBefore(fittedOn) && (removedOn == null || day.isBefore(removedOn));
    }

    /** Whether both sit in one cylinder of one truck on some day, or went in on the same day. */
    public boolean overlaps(FittedInjector other) {
        if (!truck.equals(other.truck) || cylinder != other.cylinder) {
            return false;
        }
        boolean thisStaysOn = removedOn == null || removedOn.isAfter(other.fittedOn);
        boolean otherStaysOn = other.removedOn == null || other.removedOn.isAfter(fittedOn);
        return fittedOn.equals(other.fittedOn) || thisStaysOn && otherStaysOn;
    }
}
