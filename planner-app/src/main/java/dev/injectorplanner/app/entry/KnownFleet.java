package dev.injectorplanner.app.entry;

import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Truck;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is in the fleet's tables, or a sentence that says it does not. */
public final class KnownFleet {
    private final StoreWriter writer;

    public KnownFleet(StoreWriter writer) {
        this.writer = writer;
    }

    public Depot depot(String name) {
        List<Depot> all = writer.all(Depot.class);
        return all.stream()
                .filter(depot -> depot.depot().equals(name))
                .findFirst()
                .orElseThrow(() -> RefusedEntryException.of(
                        "depot",
                        "depot \"" + name + "\": is not known",
                        "choose one of " + all.stream().map(Depot::depot).collect(Collectors.joining(", "))));
    }

    public Truck truck(String name) {
        return writer.ofTrucks(Truck.class, List.of(name)).stream()
                .findFirst()
                .orElseThrow(() ->
                        RefusedEntryException.of("truck", "truck \"" + name + "\": is not known", "check its name"));
    }

    public EngineFamily familyOf(Truck truck) {
        return writer.all(EngineFamily.class).stream()
                .filter(family -> family.family().equals(truck.family()))
                .findFirst()
                .orElseThrow();
    }

    public Optional<Part> findPart(String name) {
        return writer.all(Part.class).stream()
                .filter(part -> part.part().equals(name))
                .findFirst();
    }

    public Part injectorPart(String name) {
        return findPart(name)
                .filter(part -> part.kind() == PartKind.INJECTOR)
                .orElseThrow(() -> RefusedEntryException.of(
                        "part",
                        "part \"" + name + "\": is not an injector in the parts table",
                        "choose one of "
                                + writer.all(Part.class).stream()
                                        .filter(part -> part.kind() == PartKind.INJECTOR)
                                        .map(Part::part)
                                        .collect(Collectors.joining(", "))));
    }
}
