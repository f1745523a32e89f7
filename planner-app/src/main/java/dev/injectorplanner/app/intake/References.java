package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.cell.PlainNames;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What rows may refer to: stored things, and those that this load has brought so far. */
final class References {
    private final StoreWriter writer;
    private final Map<Class<?>, Map<String, Object>> known = new HashMap<>();
    private final Map<Class<?>, PlainNames> plain = new HashMap<>();

    References(StoreWriter writer) {
        this.writer = writer;
    }

    @Nullable
    Depot depot(String name) {
        return of(Depot.class, Depot::depot).get(name);
    }

    @Nullable
    Part part(String name) {
        return of(Part.class, Part::part).get(name);
    }

    @Nullable
    EngineFamily family(String name) {
        return of(EngineFamily.class, EngineFamily::family).get(name);
    }

    @Nullable
    DutyGroup dutyGroup(String name) {
        return of(DutyGroup.class, DutyGroup::dutyGroup).get(name);
    }

    @Nullable
    Truck truck(String name) {
        return of(Truck.class, Truck::truck).get(name);
    }

    @Nullable
    AccessStep step(String family, String step) {
        return of(AccessStep.class, References::stepName).get(family + '\n' + step);
    }

    /** The family of a truck that is known. */
    EngineFamily familyOfTruck(String name) {
        Truck truck = truck(name);
        EngineFamily family = truck == null ? null : family(truck.family());
        if (family == null) {
            throw new IllegalStateException("truck " + name + " was checked but has no family");
        }
        return family;
    }

    /** The truck of a VIN; what is no VIN of the fleet comes back as it is. */
    String truckOfVin(String vin) {
        String wanted = vin.strip().toUpperCase(Locale.ROOT);
        return trucks().stream()
                .filter(truck -> !wanted.isEmpty() && truck.vinText().equals(wanted))
                .map(Truck::truck)
                .findFirst()
                .orElse(vin.strip());
    }

    /**
     * The stored name that a cell of a column means: itself, or the only one that differs in case, spaces and signs alone.
     * What is not known comes back as it is.
     */
    String nameOf(String column, String cell) {
        PlainNames names = switch (column) {
            case "truck" -> plain(Truck.class, of(Truck.class, Truck::truck));
            case "depot" -> plain(Depot.class, of(Depot.class, Depot::depot));
            case "family" -> plain(EngineFamily.class, of(EngineFamily.class, EngineFamily::family));
            case "part" -> plain(Part.class, of(Part.class, Part::part));
            case "duty_group" -> plain(DutyGroup.class, of(DutyGroup.class, DutyGroup::dutyGroup));
            default -> new PlainNames();
        };
        return names.find(cell).orElse(cell);
    }

    private PlainNames plain(Class<?> type, Map<String, ?> names) {
        return plain.computeIfAbsent(type, each -> {
            PlainNames index = new PlainNames();
            names.keySet().forEach(index::add);
            return index;
        });
    }

    /** Zone of the depot of a truck; null for a truck that is not known. */
    @Nullable
    ZoneId zoneOfTruck(String name) {
        Truck truck = truck(name);
        Depot depot = truck == null ? null : depot(truck.depot());
        return depot == null ? null : depot.timeZone();
    }

    Collection<Truck> trucks() {
        return of(Truck.class, Truck::truck).values();
    }

    List<FittedInjector> injectors(String truck) {
        return writer.ofTrucks(FittedInjector.class, List.of(truck));
    }

    /** Names that there are, for a person who mistyped one. */
    Collection<String> names(Class<?> type) {
        return known.getOrDefault(type, Map.of()).keySet();
    }

    /** Steps of a family, for a person who mistyped one. */
    Collection<String> steps(String family) {
        return of(AccessStep.class, References::stepName).values().stream()
                .filter(step -> step.family().equals(family))
                .map(AccessStep::step)
                .collect(Collectors.toList());
    }

    /** Scheduled services of a family. */
    Collection<String> tasks(String family) {
        return of(IntervalTask.class, References::taskName).values().stream()
                .filter(task -> task.family().equals(family))
                .map(IntervalTask::task)
                .collect(Collectors.toList());
    }

    private static String taskName(IntervalTask task) {
        return task.family() + '\n' + task.task();
    }

    /** Counts a row that was taken in. */
    void add(Object row) {
        Map<String, Object> names = known.get(row.getClass());
        if (names == null) {
            return; // not asked for so far: it will be read from the store with all others
        }
        plain.remove(row.getClass()); // its names are gathered again when they are asked for
        if (row instanceof Depot depot) {
            names.put(depot.depot(), depot);
        } else if (row instanceof Part part) {
            names.put(part.part(), part);
        } else if (row instanceof EngineFamily family) {
            names.put(family.family(), family);
        } else if (row instanceof DutyGroup group) {
            names.put(group.dutyGroup(), group);
        } else if (row instanceof Truck truck) {
            names.put(truck.truck(), truck);
        } else if (row instanceof AccessStep step) {
            names.put(stepName(step), step);
        } else if (row instanceof IntervalTask task) {
            names.put(taskName(task), task);
        }
    }

    private static String stepName(AccessStep step) {
        return step.family() + '\n' + step.step();
    }

    @SuppressWarnings("unchecked") // filled with rows of that type alone
    private <R> Map<String, R> of(Class<R> type, Function<R, String> name) {
        Map<String, Object> names = known.get(type);
        if (names == null) {
            names = new HashMap<>();
            for (R row : writer.all(type)) {
                names.put(name.apply(row), row);
            }
            known.put(type, names);
        }
        return (Map<String, R>) (Map<?, ?>) names;
    }
}
