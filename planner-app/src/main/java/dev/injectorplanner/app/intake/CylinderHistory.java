package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Change;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The injectors of one cylinder, one after the other, and what work orders do to them. The order in which the work orders
 * come does not matter: an earlier one that comes later takes its place between the others.
 */
final class CylinderHistory {
    /** Work that is booked under two days so near to each other is asked about. */
    private static final int SAME_WORK_DAYS = 7;

    private final List<FittedInjector> injectors;
    private final Map<List<Object>, FittedInjector> touched = new LinkedHashMap<>();
    private Set<LocalDate> closeOuts = Set.of();

    CylinderHistory(Collection<FittedInjector> known) {
        this.injectors = new ArrayList<>(known);
    }

    /** Days on which a close-out put an injector in: what it says stands. */
    CylinderHistory closedOutOn(Set<LocalDate> days) {
        closeOuts = days;
        return this;
    }

    /** @throws InvalidValueException if a replacement is known already under another day, or a close-out says otherwise */
    void check(FittedInjector fresh) {
        String serial = fresh.serial();
        if (serial == null) {
            return;
        }
        LocalDate day = fresh.fittedOn();
        for (FittedInjector each : injectors) {
            long apart = Math.abs(ChronoUnit.DAYS.between(each.fittedOn(), day));
            if (serial.equalsIgnoreCase(each.serial()) && apart > 0 && apart <= SAME_WORK_DAYS) {
                throw new InvalidValueException(
                        "done_on",
                        day,
                        "serial " + serial + " is in cylinder " + fresh.cylinder() + " since " + each.fittedOn()
                                + ": is it the same work?",
                        "if so, enter that day here; if not, correct the serial");
            }
        }
        if (closeOuts.contains(day) && !onDay(day).isEmpty() && target(fresh).isEmpty()) {
            throw new InvalidValueException(
                    "serial",
                    serial,
                    "the close-out of " + day + " put serial "
                            + onDay(day).get(onDay(day).size() - 1).serial() + " into cylinder " + fresh.cylinder(),
                    "correct the close-out, or this row");
        }
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
        List<FittedInjector> sameDay = onDay(day);
        if (!sameDay.isEmpty()) {
            return replaceOnDay(fresh, partSaid, found, sameDay.get(sameDay.size() - 1));
        }
        FittedInjector open = openOn(day).orElse(null);
        if (open == null && injectors.stream().noneMatch(each -> each.fittedOn().isBefore(day))) {
            open = FittedInjector.beforeRecords(fresh.truck(), fresh.cylinder(), otherwise);
        }
        FittedInjector added = open == null || open.removedOn() == null
                ? fresh.removedOn() == null ? untilNext(fresh) : fresh
                : removedAs(fresh, open);
        if (open != null) {
            put(open, closed(removedAs(open, fresh), fresh, found));
        }
        closeThoseOutOn(fresh, found);
        put(null, added);
        return Change.ADDED;
    }

    /** Where one went in that day already: it is the same one, or with another serial the next one of that day. */
    private Change replaceOnDay(FittedInjector fresh, boolean partSaid, @Nullable Found found, FittedInjector last) {
        Optional<FittedInjector> known = target(fresh);
        if (known.isEmpty()) {
            put(last, closed(removedAs(last, fresh), fresh, found));
            put(null, removedAs(withFitting(fresh, last.fitting() + 1), last));
            return Change.ADDED;
        }
        FittedInjector same = known.get();
        boolean changed = put(same, filled(same, fresh, partSaid));
        Optional<FittedInjector> beforeThatDay = onDay(fresh.fittedOn()).stream()
                .filter(each -> each.wentInBefore(same))
                .reduce((first, second) -> second);
        if (beforeThatDay.isPresent()) {
            changed |= put(beforeThatDay.get(), closed(beforeThatDay.get(), fresh, found));
        } else {
            changed |= closeThoseOutOn(fresh, found);
        }
        return changed ? Change.CHANGED : Change.UNCHANGED;
    }

    /** Of those that went in on a row's day the one that the row means: of its serial, or of none that is known. */
    private Optional<FittedInjector> target(FittedInjector fresh) {
        List<FittedInjector> sameDay = onDay(fresh.fittedOn());
        String serial = fresh.serial();
        if (serial == null) {
            return sameDay.stream().reduce((first, second) -> second);
        }
        return sameDay.stream()
                .filter(each -> serial.equalsIgnoreCase(each.serial()))
                .findFirst()
                .or(() -> sameDay.stream().filter(each -> each.serial() == null).findFirst());
    }

    private List<FittedInjector> onDay(LocalDate day) {
        return injectors.stream()
                .filter(each -> each.fittedOn().equals(day))
                .sorted(Comparator.comparingInt(FittedInjector::fitting))
                .toList();
    }

    /** Those that came out on a row's day get what the row says of the old one. */
    private boolean closeThoseOutOn(FittedInjector fresh, @Nullable Found found) {
        boolean changed = false;
        for (FittedInjector before : List.copyOf(injectors)) {
            if (fresh.fittedOn().equals(before.removedOn()) && before.fittedOn().isBefore(fresh.fittedOn())) {
                changed |= put(before, closed(before, fresh, found));
            }
        }
        return changed;
    }

    /** The one that sits there on a day, and longer. */
    private Optional<FittedInjector> openOn(LocalDate day) {
        return injectors.stream()
                .filter(each -> each.fittedOn().isBefore(day))
                .filter(each -> each.removedOn() == null || each.removedOn().isAfter(day))
                .findFirst();
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

    private static FittedInjector withFitting(FittedInjector injector, int fitting) {
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
                injector.removedOn(),
                injector.removedOdometerKm(),
                injector.removedEngineHours(),
                injector.found(),
                fitting);
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
