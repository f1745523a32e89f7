package dev.injectorplanner.app.intake;

import dev.injectorplanner.app.store.StoreWriter;

/**
 * Where rows go, and what they are checked against on the way.
 *
 * @param writer the store's writer
 * @param writes whether rows are written at all
 * @param batches whether each batch is made permanent at once, or all of a file at its end
 */
record Destination(
        StoreWriter writer,
        boolean writes,
        boolean batches,
        References references,
        ReferenceCheck check,
        InjectorPlaces places,
        MeterWatch meters,
        Causes causes) {

    static Destination nowhere(StoreWriter writer, Causes causes) {
        return of(writer, false, false, causes);
    }

    static Destination store(StoreWriter writer, boolean batches, Causes causes) {
        return of(writer, true, batches, causes);
    }

    private static Destination of(StoreWriter writer, boolean writes, boolean batches, Causes causes) {
        References references = new References(writer);
        return new Destination(
                writer,
                writes,
                batches,
                references,
                new ReferenceCheck(references),
                new InjectorPlaces(writer, !writes),
                new MeterWatch(writer),
                causes);
    }
}
