package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Change;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The injectors of one cylinder, one after the other, and what work orders do to them. The order in which the work orders
 * come does not matter: an earlier one that comes later takes its place between the others.
 */
final class CylinderHistory {
    private final List<FittedInjector> injectors;
    private final Map<List<Object>, FittedInjector> touched = new LinkedHashMap<>();

    CylinderHistory(Collection<FittedInjector> known) {
        this.injectors = new ArrayList<>(known);
    }

    /**
     * Takes a replacement in.
     *
     * @param fresh the new injector, still in; its origin is unknown where nobody says
     * @param partSaid whether its part was said rather than taken from the family
     * @param found what was found of the old one, or null
     * @param otherwise part of an injector that was in before the records began
     */
    Change replace(FittedInjector fresh, boolean partSaid, @Nullable Found found, String otherwise) {
        LocalDate day = fresh.fittedOn();
        Optional<FittedInjector> same =
                injectors.stream().filter(each -> each.fittedOn().equals(day)).findFirst();
        if (same.isPresent()) {
            boolean changed = put(same.get(), filled(same.get(), fresh, partSaid));
            for (FittedInjector before : List.copyOf(injectors)) {
                if (day.equals(before.removedOn()) && !before.fittedOn().equals(day)) {
                    changed |= put(before, closed(before, fresh, found));
                }
            }
            return changed ? Change.CHANGED : Change.UNCHANGED;
        }
        FittedInjector open = openOn(day).orElse(null);
        if (open == null && injectors.stream().noneMatch(each -> each.fittedOn().isBefore(day))) {
            open = beforeRecords(fresh, otherwise);
        }
        FittedInjector added = open == null || open.removedOn() == null
                ? fresh.removedOn() == null ? untilNext(fresh) : fresh
                : removedAs(fresh, open);
        if (open != null) {
            put(open, closed(removedAs(open, fresh), fresh, found));
        }
        put(null, added);
        return Change.ADDED;
    }

    /** The one that sits there on a day, and longer. */
    private Optional<FittedInjector> openOn(LocalDate day) {
        return injectors.stream()
                .filter(each -> each.fittedOn().isBefore(day))
                .filter(each -> each.removedOn() == null || each.removedOn().isAfter(day))
                .findFirst();
    }

    private static FittedInjector beforeRecords(FittedInjector fresh, String part) {
        return new FittedInjector(
                fresh.truck(),
                fresh.cylinder(),
                part,
                null,
                null,
                Origin.UNKNOWN,
                FittedInjector.BEFORE_RECORDS,
                null,
                null,
                null,
                null,
                null,
                null);
    }

    /** Two cannot sit in one cylinder: where a later one is known, the new one came out by then. */
    private FittedInjector untilNext(FittedInjector fresh) {
        return injectors.stream()
                .map(FittedInjector::fittedOn)
                .filter(day -> day.isAfter(fresh.fittedOn()))
                .min(LocalDate::compareTo)
                .map(day -> removed(fresh, day, null, null, null))
                .orElse(fresh);
    }

    private boolean put(@Nullable FittedInjector before, FittedInjector after) {
        if (after.equals(before) && injectors.contains(before)) {
            return false;
        }
        injectors.removeIf(each -> each.sameKey(after));
        injectors.add(after);
        touched.put(List.of(after.fittedOn(), after.fitting()), after);
        return true;
    }

    /** Injectors that were changed or added. */
    Collection<FittedInjector> touched() {
        return touched.values();
    }

    private static FittedInjector closed(FittedInjector old, FittedInjector fresh, @Nullable Found found) {
        return removed(
                old,
                fresh.fittedOn(),
                or(fresh.odometerKm(), old.removedOdometerKm()),
                or(fresh.engineHours(), old.removedEngineHours()),
                or(found, old.found()));
    }

    /** The injector with the removal of another: what came out later was this one. Without the other's removal: still in. */
    private static FittedInjector removedAs(FittedInjector injector, FittedInjector other) {
        return removed(
                injector, other.removedOn(), other.removedOdometerKm(), other.removedEngineHours(), other.found());
    }

    static FittedInjector removed(
            FittedInjector injector,
            @Nullable LocalDate on,
            @Nullable Double odometerKm,
            @Nullable Double engineHours,
            @Nullable Found found) {
        return new FittedInjector(
                injector.truck(),
                injector.cylinder(),
                injector.part(),
                injector.serial(),
                injector.calibrationCode(),
                injector.origin(),
                injector.fittedOn(),
                injector.odometerKm(),
                injector.engineHours(),
                on,
                odometerKm,
                engineHours,
                found,
                injector.fitting());
    }

    /** What is known of a fitted injector with what the row adds. */
    private static FittedInjector filled(FittedInjector known, FittedInjector fresh, boolean partSaid) {
        BiFunction<@Nullable Double, @Nullable Double, @Nullable Double> number = CylinderHistory::or;
        return new FittedInjector(
                known.truck(),
                known.cylinder(),
                partSaid ? fresh.part() : known.part(),
                or(fresh.serial(), known.serial()),
                or(fresh.calibrationCode(), known.calibrationCode()),
                fresh.origin() == Origin.UNKNOWN ? known.origin() : fresh.origin(),
                known.fittedOn(),
                number.apply(fresh.odometerKm(), known.odometerKm()),
                number.apply(fresh.engineHours(), known.engineHours()),
                known.removedOn(),
                known.removedOdometerKm(),
                known.removedEngineHours(),
                known.found(),
                known.fitting());
    }

    private static <T> @Nullable T or(@Nullable T said, @Nullable T known) {
        return Objects.nonNull(said) ? said : known;
    }
}
