package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * One serial in one cylinder from one day to another. One that was in before the records began has no known day of fitting:
 * {@link #BEFORE_RECORDS} stands for it, and nothing is learned of lives from it.
 *
 * @param truck the truck
 * @param cylinder number as the engine maker counts
 * @param part its part number
 * @param serial the unit's serial, or null where unknown
 * @param calibrationCode the code that goes into the engine controller under its cylinder, or null
 * @param origin new, reman or unknown
 * @param fittedOn day it went in; {@link #BEFORE_RECORDS} where nobody knows
 * @param odometerKm odometer that day, km, or null
 * @param engineHours engine hours that day, or null
 * @param removedOn day it came out, or null while it is in
 * @param removedOdometerKm odometer when it came out, km, or null
 * @param removedEngineHours engine hours when it came out, or null
 * @param found what was found then, or null while it is in
 * @param fitting order among those that went in on that day, from 1: an injector that fails at once is followed by another
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
        @Nullable Found found,
        int fitting) {
    /** Stands for a day of fitting that nobody knows: before the records began. */
    public static final LocalDate BEFORE_RECORDS = LocalDate.of(1900, 1, 1);

    /** The most injectors that go into one cylinder in one day. */
    public static final int MOST_A_DAY = 20;

    private static final Comparator<FittedInjector> IN_TIME =
            Comparator.comparing(FittedInjector::fittedOn).thenComparing(FittedInjector::fitting);

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
        Require.within("fitting", fitting, 1, MOST_A_DAY);
        if (removedOn == null) {
            nothingWithoutRemoval(removedOdometerKm, removedEngineHours, found);
        } else if (removedOn.isBefore(fittedOn)) {
            throw new InvalidValueException(
                    "removed_on", removedOn, "is before fitted_on " + fittedOn, "correct whichever is wrong");
        }
    }

    /** The only one that went in on its day. */
    public FittedInjector(
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
        this(
                truck,
                cylinder,
                part,
                serial,
                calibrationCode,
                origin,
                fittedOn,
                odometerKm,
                engineHours,
                removedOn,
                removedOdometerKm,
                removedEngineHours,
                found,
                1);
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

    /**
     * An injector that was in before the records began: no day, meter, serial or origin is known.
     *
     * @param part its part number; that of the family where nobody knows another
     * @return one that is still in
     */
    public static FittedInjector beforeRecords(String truck, int cylinder, String part) {
        return new FittedInjector(
                truck, cylinder, part, null, null, Origin.UNKNOWN, BEFORE_RECORDS, null, null, null, null, null, null);
    }

    /** Whether it is known when it went in. */
    public boolean fittingKnown() {
        return !fittedOn.equals(BEFORE_RECORDS);
    }

    /** Day of fitting in words: the day, or that it was in before the records began. */
    public String fittedWords() {
        return fittingKnown() ? fittedOn.toString() : "before the records began";
    }

    /** Whether it went in before another, on an earlier day or earlier that day. */
    public boolean wentInBefore(FittedInjector other) {
        return IN_TIME.compare(this, other) < 0;
    }

    /** Whether both have the same key: truck, cylinder, day of fitting, and order within that day. */
    public boolean sameKey(FittedInjector other) {
        return truck.equals(other.truck) && cylinder == other.cylinder && IN_TIME.compare(this, other) == 0;
    }

    /** Whether both sit in one cylinder of one truck at once, or have the same key. */
    public boolean overlaps(FittedInjector other) {
        if (!truck.equals(other.truck) || cylinder != other.cylinder) {
            return false;
        }
        int order = IN_TIME.compare(this, other);
        FittedInjector first = order <= 0 ? this : other;
        FittedInjector second = order <= 0 ? other : this;
        LocalDate out = first.removedOn;
        return order == 0 || out == null || out.isAfter(second.fittedOn);
    }
}
