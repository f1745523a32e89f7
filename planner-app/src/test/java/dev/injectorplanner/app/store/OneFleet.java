package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FleetSnapshot;

/** {@link OneOfEach} in a store, for tests of other rooms. */
public final class OneFleet {
    private OneFleet() {}

    public static void into(Store store) {
        into(store, OneOfEach.fleet());
    }

    public static void into(Store store, FleetSnapshot fleet) {
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, fleet);
            writer.commit();
        }
    }
}
