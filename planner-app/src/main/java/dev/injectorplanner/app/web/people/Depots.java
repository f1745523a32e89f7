package dev.injectorplanner.app.web.people;

import dev.injectorplanner.app.store.Store;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Depots to choose from in a form. */
final class Depots {
    private Depots() {}

    static List<String> list(Store store) {
        return store.inTransaction(
                session -> session.createSelectionQuery("select d.depot from DepotRow d order by d.depot", String.class)
                        .getResultList());
    }

    /** A form's choice; null for all depots. */
    static @Nullable String chosen(String depot) {
        return depot.isBlank() ? null : depot;
    }
}
