package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.imports.propose.KnownNames;
import java.util.Map;

/** Names in the store, by which a foreign file's columns and cells are recognised. */
public final class StoredNames {
    private StoredNames() {}

    public static KnownNames read(Store store) {
        try (StoreWriter writer = store.writer()) {
            return new KnownNames(Map.of(
                    "truck", writer.all(Truck.class).stream().map(Truck::truck).toList(),
                    "depot", writer.all(Depot.class).stream().map(Depot::depot).toList(),
                    "family",
                            writer.all(EngineFamily.class).stream()
                                    .map(EngineFamily::family)
                                    .toList(),
                    "part", writer.all(Part.class).stream().map(Part::part).toList(),
                    "duty_group",
                            writer.all(DutyGroup.class).stream()
                                    .map(DutyGroup::dutyGroup)
                                    .toList()));
        }
    }
}
