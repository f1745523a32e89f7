package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.ShopRecords;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                dutyGroups(),
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
                rows(StoredTables.RULES),
                new ShopRecords(
                        rows(StoredTables.SHIFTS),
                        rows(StoredTables.REPAIRS),
                        rows(StoredTables.TRANSFERS),
                        rows(StoredTables.TASK_DONE),
                        rows(StoredTables.FAILURE_ANSWERS),
                        List.of(),
                        rows(StoredTables.RETURNS)));
    }

    /**
     * Trucks of other depots count as on the road: a duty group that spans depots asks this one only for what they leave
     * open.
     */
    private List<DutyGroup> dutyGroups() {
        List<DutyGroup> groups = rows(StoredTables.DUTY_GROUPS);
        if (depot == null) {
            return groups;
        }
        Map<String, Integer> elsewhere = new HashMap<>();
        session.createSelectionQuery(
                        "from TruckRow r where r.depot <> :depot and r.dutyGroup is not null", TruckRow.class)
                .setParameter("depot", depot)
                .getResultList()
                .forEach(row -> elsewhere.merge(String.valueOf(row.row().dutyGroup()), 1, Integer::sum));
        return groups.stream()
                .map(group -> new DutyGroup(
                        group.dutyGroup(),
                        Math.max(0, group.minimumOnRoad() - elsewhere.getOrDefault(group.dutyGroup(), 0)),
                        group.downtimePerDay()))
                .toList();
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
