package dev.injectorplanner.app.store;

/** {@link OneOfEach} in a store, for tests of other rooms. */
public final class OneFleet {
    private OneFleet() {}

    public static void into(Store store) {
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
    }
}
