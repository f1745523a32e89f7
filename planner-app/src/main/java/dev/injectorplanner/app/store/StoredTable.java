package dev.injectorplanner.app.store;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * How a table of records is stored.
 *
 * @param type the record
 * @param entity the stored row
 * @param blank makes an empty stored row
 * @param key natural key of a record: two records with one key are the same thing at different times
 * @param lookup how stored rows are found again when records of the same keys come in
 * @param scope where clause (on {@code r}) that keeps one depot's rows, with {@code :depot}; empty where all are kept
 */
record StoredTable<R>(
        Class<R> type,
        Class<? extends Row<R>> entity,
        Supplier<? extends Row<R>> blank,
        Function<R, List<Object>> key,
        Lookup<R> lookup,
        String scope) {

    /** How stored rows are found. */
    sealed interface Lookup<R> {}

    /** The table is small: it is read whole, once a load. */
    record Whole<R>() implements Lookup<R> {}

    /** All rows of the trucks at hand. */
    record ByTruck<R>(Function<R, String> truck) implements Lookup<R> {}

    /** A long history: rows of a truck between two moments. {@code moment} is the entity's property of that name. */
    record ByTruckAndMoment<R>(Function<R, String> truck, Function<R, java.time.Instant> at, String moment)
            implements Lookup<R> {}

    Row<R> stored(R record) {
        Row<R> row = blank.get();
        row.take(record);
        return row;
    }

    String entityName() {
        return entity.getSimpleName();
    }
}
