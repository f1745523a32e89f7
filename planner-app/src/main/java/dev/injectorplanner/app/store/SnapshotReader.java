package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import java.util.List;
import org.hibernate.StatelessSession;
import org.hibernate.query.SelectionQuery;
import org.jspecify.annotations.Nullable;

/** Reads a snapshot of the fleet, or of one depot. */
final class SnapshotReader {
    private final StatelessSession session;
    private final @Nullable String depot;

    SnapshotReader(StatelessSession session, @Nullable String depot) {
        this.session = session;
        this.depot = depot;
    }

    FleetSnapshot read() {
        return new FleetSnapshot(
                rows(StoredTables.DEPOTS),
                rows(StoredTables.CAPACITY),
                rows(StoredTables.ENGINE_FAMILIES),
                rows(StoredTables.ACCESS),
                rows(StoredTables.DUTY_GROUPS),
                rows(StoredTables.TRUCKS),
                rows(StoredTables.INJECTORS),
                rows(StoredTables.READINGS),
                rows(StoredTables.FAULTS),
                rows(StoredTables.CYLINDER_TESTS),
                rows(StoredTables.PARTS),
                rows(StoredTables.JOB_PARTS),
                rows(StoredTables.STOCK),
                rows(StoredTables.PURCHASE_LINES),
                rows(StoredTables.AWAY),
                rows(StoredTables.INTERVALS),
                rows(StoredTables.RULES));
    }

    private <R> List<R> rows(StoredTable<R> table) {
        boolean scoped = depot != null && !table.scope().isEmpty();
        String query = "from " + table.entityName() + " r" + (scoped ? " where " + table.scope() : "");
        SelectionQuery<? extends Row<R>> selection = session.createSelectionQuery(query, table.entity());
        if (scoped) {
            selection.setParameter("depot", depot);
        }
        try (var stream = selection.setFetchSize(5_000).getResultStream()) {
            return stream.<R>map(Row::row).toList();
        }
    }
}
