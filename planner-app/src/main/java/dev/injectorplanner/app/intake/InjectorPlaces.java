package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.FittedInjector;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Holds injectors to one in a cylinder at once: those stored, those taken in by this load, and those of the batch at
 * hand. Within a batch the order of rows does not matter.
 */
final class InjectorPlaces {
    private final StoreWriter writer;
    private final boolean remember;
    private final Map<Place, List<FittedInjector>> taken = new HashMap<>();

    private record Place(String truck, int cylinder) {
        static Place of(FittedInjector injector) {
            return new Place(injector.truck(), injector.cylinder());
        }
    }

    /** @param remember whether taken rows must be kept here, since they do not go to the store */
    InjectorPlaces(StoreWriter writer, boolean remember) {
        this.writer = writer;
        this.remember = remember;
    }

    /**
     * The rows of a batch that find their cylinder taken, each with the one that is in the way. Those that are not named
     * may be stored together.
     *
     * @param displaced stored ones as they will be, since rows of the batch take their place
     */
    Map<FittedInjector, FittedInjector> conflicts(List<FittedInjector> batch, List<FittedInjector> displaced) {
        Map<FittedInjector, FittedInjector> refused = new HashMap<>();
        Map<Place, List<FittedInjector>> stored = stored(batch);
        for (FittedInjector moved : displaced) {
            at(stored, moved).removeIf(other -> other.sameKey(moved));
            at(stored, moved).add(moved);
        }
        int before;
        do { // a refused change leaves its stored version in place, which may be in another row's way
            before = refused.size();
            refuse(batch, stored, refused);
        } while (refused.size() > before);
        return refused;
    }

    private static void refuse(
            List<FittedInjector> batch,
            Map<Place, List<FittedInjector>> stored,
            Map<FittedInjector, FittedInjector> refused) {
        Map<Place, List<FittedInjector>> now = new HashMap<>();
        stored.forEach((place, list) -> now.put(place, new ArrayList<>(list)));
        List<FittedInjector> good =
                batch.stream().filter(row -> !refused.containsKey(row)).toList();
        good.forEach(row -> at(now, row).removeIf(other -> other.sameKey(row)));
        for (FittedInjector row : good) {
            Optional<FittedInjector> inTheWay =
                    at(now, row).stream().filter(row::overlaps).findFirst();
            inTheWay.ifPresentOrElse(
                    other -> {
                        if (!other.equals(row)) {
                            refused.put(row, other);
                        }
                    },
                    () -> at(now, row).add(row));
        }
    }

    /** The injectors of a truck, stored or taken in by this load. */
    List<FittedInjector> of(String truck) {
        List<FittedInjector> there = new ArrayList<>(writer.ofTrucks(FittedInjector.class, List.of(truck)));
        taken.forEach((place, rows) -> {
            if (place.truck().equals(truck)) {
                rows.forEach(row -> {
                    there.removeIf(other -> other.sameKey(row));
                    there.add(row);
                });
            }
        });
        return there;
    }

    /**
     * Rows of which a later work order is on record: where a row says nothing of the removal, it came out as that says, and
     * where only an injector from before the records is known, that one came out when the row's went in.
     */
    List<FittedInjector> completed(List<FittedInjector> batch) {
        Map<Place, List<FittedInjector>> stored = stored(batch);
        return batch.stream()
                .map(row ->
                        row.removedOn() == null ? completed(row, stored.getOrDefault(Place.of(row), List.of())) : row)
                .toList();
    }

    private static FittedInjector completed(FittedInjector row, List<FittedInjector> there) {
        for (FittedInjector other : there) {
            LocalDate out = other.removedOn();
            boolean covers = other.sameKey(row) || (!other.fittingKnown() && other.overlaps(row));
            boolean followed = there.stream().anyMatch(next -> next.fittedOn().equals(out) && next != other);
            if (covers && out != null && followed && out.isAfter(row.fittedOn())) {
                return CylinderHistory.removed(
                        row, out, other.removedOdometerKm(), other.removedEngineHours(), other.found());
            }
        }
        return row;
    }

    /** Injectors from before the records that came out when a row's went in, as they are then. */
    List<FittedInjector> displaced(List<FittedInjector> batch) {
        Map<Place, List<FittedInjector>> stored = stored(batch);
        List<FittedInjector> displaced = new ArrayList<>();
        for (FittedInjector row : batch) {
            for (FittedInjector other : stored.getOrDefault(Place.of(row), List.of())) {
                LocalDate out = other.removedOn();
                if (!other.fittingKnown()
                        && row.fittingKnown()
                        && out != null
                        && out.equals(row.removedOn())
                        && batch.stream().noneMatch(other::sameKey)) {
                    displaced.add(
                            CylinderHistory.removed(other, row.fittedOn(), row.odometerKm(), row.engineHours(), null));
                }
            }
        }
        return displaced;
    }

    private Map<Place, List<FittedInjector>> stored(Collection<FittedInjector> batch) {
        Map<Place, List<FittedInjector>> places = new HashMap<>();
        List<String> trucks =
                batch.stream().map(FittedInjector::truck).distinct().toList();
        writer.ofTrucks(FittedInjector.class, trucks)
                .forEach(row -> at(places, row).add(row));
        for (FittedInjector row : batch) {
            for (FittedInjector earlier : taken.getOrDefault(Place.of(row), List.of())) {
                List<FittedInjector> there = at(places, row);
                there.removeIf(other -> other.sameKey(earlier));
                there.add(earlier);
            }
        }
        return places;
    }

    /** Counts in rows that were taken. */
    void add(List<FittedInjector> rows) {
        if (remember) {
            rows.forEach(row -> at(taken, row).add(row));
        }
    }

    private static List<FittedInjector> at(Map<Place, List<FittedInjector>> places, FittedInjector row) {
        return places.computeIfAbsent(Place.of(row), place -> new ArrayList<>());
    }
}
