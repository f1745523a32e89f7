package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.StoredTable.ByTruckAndMoment;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernate.StatelessSession;

/**
 * Finds stored rows of long histories. Most loads append: rows later than the truck's latest stored one are new without
 * a look, so that only that latest moment is asked for, once a truck and load.
 */
final class Histories<R> {
    private final StatelessSession session;
    private final StoredTable<R> table;
    private final ByTruckAndMoment<R> lookup;
    private final Map<String, Instant> latest = new HashMap<>();

    Histories(StatelessSession session, StoredTable<R> table) {
        this.session = session;
        this.table = table;
        this.lookup = (ByTruckAndMoment<R>) table.lookup();
    }

    /** Stored rows that may have the keys of {@code rows}; latest moments then count {@code rows} in. */
    List<Row<R>> find(List<R> rows) {
        Map<String, List<R>> byTruck = new LinkedHashMap<>();
        rows.forEach(row -> byTruck.computeIfAbsent(lookup.truck().apply(row), truck -> new ArrayList<>())
                .add(row));
        List<Row<R>> found = new ArrayList<>();
        byTruck.forEach((truck, list) -> found.addAll(find(truck, list)));
        return found;
    }

    private List<? extends Row<R>> find(String truck, List<R> rows) {
        Instant known = latest.computeIfAbsent(truck, this::latest);
        List<Instant> moments = rows.stream().map(lookup.at()).sorted().toList();
        Instant first = moments.get(0);
        Instant last = moments.get(moments.size() - 1);
        latest.put(truck, last.isAfter(known) ? last : known);
        if (first.isAfter(known)) {
            return List.of();
        }
        return session.createSelectionQuery(
                        "from " + table.entityName() + " r where r.truck = :truck and r." + lookup.moment()
                                + " between :first and :last",
                        table.entity())
                .setParameter("truck", truck)
                .setParameter("first", first)
                .setParameter("last", last)
                .getResultList();
    }

    private Instant latest(String truck) {
        Instant moment = session.createSelectionQuery(
                        "select max(r." + lookup.moment() + ") from " + table.entityName()
                                + " r where r.truck = :truck",
                        Instant.class)
                .setParameter("truck", truck)
                .getSingleResultOrNull();
        return moment == null ? Instant.MIN : moment;
    }
}
