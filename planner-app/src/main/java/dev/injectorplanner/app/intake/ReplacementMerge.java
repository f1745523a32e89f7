package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Change;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.core.fleet.Truck;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Work orders against the injectors: each closes those that were in and opens those that went in. */
final class ReplacementMerge {
    private final Destination destination;
    private final Map<String, Map<Integer, CylinderHistory>> trucks = new LinkedHashMap<>();
    private final Map<String, Map<Integer, Set<LocalDate>>> closeOuts = new HashMap<>();

    ReplacementMerge(Destination destination) {
        this.destination = destination;
    }

    /** Writes what the rows meant. */
    void finish() {
        List<FittedInjector> touched = trucks.values().stream()
                .flatMap(cylinders -> cylinders.values().stream())
                .flatMap(history -> history.touched().stream())
                .toList();
        destination.writer().merge(FittedInjector.class, touched, destination.writes());
        destination.places().add(touched);
    }

    /**
     * What a row means for the store.
     *
     * @throws InvalidValueException if it says otherwise than what is known; then nothing of it is taken
     */
    Change take(Replacement row) {
        EngineFamily family = destination.references().familyOfTruck(row.truck());
        List<Integer> cylinders = row.cylinders().of(family);
        for (int i = 0; i < cylinders.size(); i++) {
            history(row.truck(), cylinders.get(i)).check(fresh(row, cylinders.get(i), i, family));
        }
        boolean changed = false;
        boolean added = false;
        for (int i = 0; i < cylinders.size(); i++) {
            Change change = history(row.truck(), cylinders.get(i))
                    .replace(
                            fresh(row, cylinders.get(i), i, family),
                            row.part() != null,
                            row.found(),
                            family.injectorPart());
            added |= change == Change.ADDED;
            changed |= change == Change.CHANGED;
        }
        return added ? Change.ADDED : changed ? Change.CHANGED : Change.UNCHANGED;
    }

    private CylinderHistory history(String truck, int cylinder) {
        Map<Integer, CylinderHistory> ofTruck = trucks.computeIfAbsent(truck, this::read);
        Map<Integer, Set<LocalDate>> days = closeOuts.computeIfAbsent(truck, destination.writer()::closeOutDays);
        return ofTruck.computeIfAbsent(cylinder, none -> new CylinderHistory(List.of()))
                .closedOutOn(days.getOrDefault(cylinder, Set.of()));
    }

    private Map<Integer, CylinderHistory> read(String truck) {
        Map<Integer, List<FittedInjector>> byCylinder = new LinkedHashMap<>();
        destination
                .places()
                .of(truck)
                .forEach(each -> byCylinder
                        .computeIfAbsent(each.cylinder(), none -> new ArrayList<>())
                        .add(each));
        Map<Integer, CylinderHistory> histories = new LinkedHashMap<>();
        byCylinder.forEach((cylinder, injectors) -> histories.put(cylinder, new CylinderHistory(injectors)));
        return histories;
    }

    private static FittedInjector fresh(Replacement row, int cylinder, int at, EngineFamily family) {
        String part = row.part();
        Origin origin = row.origin();
        return new FittedInjector(
                row.truck(),
                cylinder,
                part == null ? family.injectorPart() : part,
                row.serials().isEmpty() ? null : row.serials().get(at),
                row.codes().isEmpty() ? null : row.codes().get(at),
                origin == null ? Origin.UNKNOWN : origin,
                row.doneOn(),
                row.odometerKm(),
                row.engineHours(),
                null,
                null,
                null,
                null);
    }

    /** @throws InvalidValueException if the row does not fit its truck's engine */
    static void check(Replacement row, Truck truck, EngineFamily family) {
        int cylinders = row.cylinders().of(family).size();
        each("serial", row.serials(), cylinders, truck);
        each("code", row.codes(), cylinders, truck);
    }

    private static void each(String column, List<String> given, int cylinders, Truck truck) {
        if (!given.isEmpty() && given.size() != cylinders) {
            throw new InvalidValueException(
                    column,
                    String.join("; ", given),
                    "names " + given.size() + " for " + cylinders + " cylinders of truck " + truck.truck(),
                    "give one a cylinder, separated by semicolons, or a row for each cylinder");
        }
    }
}
