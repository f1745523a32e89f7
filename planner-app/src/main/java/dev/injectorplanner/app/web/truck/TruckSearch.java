package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.store.Store;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds trucks by a piece of their name, VIN, or the serial or part of an injector that is fitted. */
public final class TruckSearch {
    private static final int MOST = 100;

    private final Store store;

    public TruckSearch(Store store) {
        this.store = store;
    }

    /**
     * A truck that was found.
     *
     * @param truck its name
     * @param vin its VIN
     * @param depot its depot
     * @param family its engine
     */
    public record Row(String truck, String vin, String depot, String family) {}

    /** The same, as many as a person looks through. */
    public List<Row> find(String piece, @Nullable String depot) {
        return find(piece, depot, MOST);
    }

    /**
     * Trucks that hold a piece of text, by name; all where the piece is empty. A serial is found where it is and where it was:
     * old units come back to the shelf with nothing but that.
     *
     * @param depot the one depot to look in, or null
     * @param most rows at most
     */
    public List<Row> find(String piece, @Nullable String depot, int most) {
        String like = "%"
                + piece.toLowerCase(java.util.Locale.ROOT)
                        .replace("!", "!!")
                        .replace("%", "!%")
                        .replace("_", "!_") + "%";
        return store.inTransaction(session -> session
                .createSelectionQuery(
                        "select t.truck, coalesce(t.vin, ''), t.depot, t.family from TruckRow t where (:depot is null or t.depot = :depot)"
                                + " and (lower(t.truck) like :like escape '!' or lower(t.vin) like :like escape '!'"
                                + " or exists (select 1 from FittedInjectorRow i where i.truck = t.truck"
                                + " and (lower(i.serial) like :like escape '!' or i.removedOn is null"
                                + " and lower(i.part) like :like escape '!')))"
                                + " order by t.truck",
                        Object[].class)
                .setParameter("depot", depot, String.class)
                .setParameter("like", like)
                .setMaxResults(most)
                .getResultList()
                .stream()
                .map(row -> new Row((String) row[0], (String) row[1], (String) row[2], (String) row[3]))
                .toList());
    }
}
