package dev.injectorplanner.app.store;

import dev.injectorplanner.app.store.StoredTable.ByTruck;
import dev.injectorplanner.core.fleet.Reading;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hibernate.SessionFactory;
import org.hibernate.StatelessSession;
import org.hibernate.Transaction;
import org.jspecify.annotations.Nullable;

/**
 * Writes records, batch by batch. What {@link #commit()} has returned from is there for good; what was merged since is
 * undone by {@link #rollback()} or by closing. A writer that only finds out remembers small tables as if it had written.
 * One thread.
 */
public final class StoreWriter implements AutoCloseable {
    private final StorePools source;
    private final StatelessSession session;
    private final Map<Class<?>, Map<List<Object>, Row<?>>> whole = new HashMap<>();
    private final Map<Class<?>, Histories<?>> histories = new HashMap<>();
    private @Nullable StockCause stockCause;
    private @Nullable Transaction transaction;

    StoreWriter(SessionFactory sessions, StorePools source) {
        this.source = source;
        this.session = sessions.openStatelessSession();
    }

    /**
     * Adds new records, changes those whose values differ, leaves the rest.
     *
     * @param rows records; one that repeats an earlier one word for word is unchanged
     * @param write false to only find out
     * @return what each of them meant, in their order
     */
    public <R> List<Change> merge(Class<R> type, List<R> rows, boolean write) {
        begin();
        StoredTable<R> table = StoredTables.of(type);
        Map<List<Object>, Row<R>> stored = find(table, rows);
        List<Change> changes = new ArrayList<>(rows.size());
        List<Row<R>> added = new ArrayList<>();
        List<Row<R>> changed = new ArrayList<>();
        StockLog stock = new StockLog();
        for (R record : rows) {
            List<Object> key = table.key().apply(record);
            Row<R> row = stored.get(key);
            if (row == null) {
                changes.add(Change.ADDED);
                Row<R> blank = table.stored(record);
                added.add(blank);
                stock.note(null, record);
                stored.put(key, blank);
            } else if (row.row().equals(record)) {
                changes.add(Change.UNCHANGED);
            } else {
                changes.add(Change.CHANGED);
                stock.note(row.row(), record);
                row.take(record);
                changed.add(row);
            }
        }
        if (write) {
            write(added, changed);
            if (stock.any()) {
                StockCause cause = stockCause == null ? StockCause.loaded() : stockCause;
                onConnection(connection -> stock.write(connection, cause));
            }
        }
        return changes;
    }

    /** Says why the stock lines change that are merged from here on; without it they count as loaded from a file. */
    public void because(StockCause cause) {
        this.stockCause = cause;
    }

    /** Changes go first: an injector's removal makes room for the next one in its cylinder. */
    private <R> void write(List<Row<R>> added, List<Row<R>> changed) {
        if (!changed.isEmpty()) {
            session.updateMultiple(changed);
        }
        if (!added.isEmpty()) {
            session.insertMultiple(added);
        }
    }

    /** Every record of a small table, with what was merged so far. */
    public <R> List<R> all(Class<R> type) {
        begin();
        return whole(StoredTables.of(type)).values().stream().map(Row::row).toList();
    }

    /** Stored records of some trucks. */
    public <R> List<R> ofTrucks(Class<R> type, Collection<String> trucks) {
        begin();
        return rowsOfTrucks(StoredTables.of(type), trucks).stream()
                .map(Row::row)
                .toList();
    }

    /** The stored reading that comes before a moment. */
    public Optional<Reading> findReadingBefore(String truck, Instant moment) {
        begin();
        return session
                .createSelectionQuery(
                        "from ReadingRow r where r.truck = :truck and r.takenAt < :moment order by r.takenAt desc",
                        ReadingRow.class)
                .setParameter("truck", truck)
                .setParameter("moment", moment)
                .setMaxResults(1)
                .getResultList()
                .stream()
                .map(ReadingRow::row)
                .findFirst();
    }

    private <R> Map<List<Object>, Row<R>> find(StoredTable<R> table, List<R> rows) {
        if (table.lookup() instanceof StoredTable.Whole<R>) {
            return whole(table);
        }
        List<? extends Row<R>> found = table.lookup() instanceof ByTruck<R> byTruck
                ? rowsOfTrucks(
                        table, rows.stream().map(byTruck.truck()).distinct().toList())
                : history(table).find(rows);
        Map<List<Object>, Row<R>> byKey = new HashMap<>();
        found.forEach(row -> byKey.put(table.key().apply(row.row()), row));
        return byKey;
    }

    private <R> List<? extends Row<R>> rowsOfTrucks(StoredTable<R> table, Collection<String> trucks) {
        return session.createSelectionQuery(
                        "from " + table.entityName() + " r where r.truck in (:trucks)", table.entity())
                .setParameterList("trucks", trucks)
                .getResultList();
    }

    @SuppressWarnings("unchecked") // filled with rows of that table alone
    private <R> Map<List<Object>, Row<R>> whole(StoredTable<R> table) {
        Map<List<Object>, Row<?>> rows = whole.computeIfAbsent(table.type(), type -> {
            Map<List<Object>, Row<?>> read = new LinkedHashMap<>();
            session.createSelectionQuery("from " + table.entityName(), table.entity())
                    .getResultList()
                    .forEach(row -> read.put(table.key().apply(row.row()), row));
            return read;
        });
        return (Map<List<Object>, Row<R>>) (Map<?, ?>) rows;
    }

    @SuppressWarnings("unchecked") // made for that table alone
    private <R> Histories<R> history(StoredTable<R> table) {
        return (Histories<R>) histories.computeIfAbsent(table.type(), type -> new Histories<>(session, table));
    }

    /** Days on which a close-out that holds put an injector into a cylinder of a truck, by cylinder. */
    public Map<Integer, Set<LocalDate>> closeOutDays(String truck) {
        return onConnection(connection -> {
            Map<Integer, Set<LocalDate>> days = new HashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select k.cylinder, c.done_on from close_out c join close_out_cylinder k"
                            + " on k.close_out = c.id where c.truck = ? and k.fitted = true and c.void_reason = ''"
                            + " and not exists (select 1 from close_out l where l.corrects = c.id)")) {
                select.setString(1, truck);
                try (ResultSet rows = select.executeQuery()) {
                    while (rows.next()) {
                        days.computeIfAbsent(rows.getInt(1), none -> new HashSet<>())
                                .add(rows.getObject(2, LocalDate.class));
                    }
                }
            }
            return days;
        });
    }

    /** SQL of other tables, in the writer's transaction. */
    <T extends @Nullable Object> T onConnection(StoreSql.Work<T> work) {
        begin();
        return session.doReturningWork(work::in);
    }

    private void begin() {
        if (transaction == null) {
            transaction = session.beginTransaction();
        }
    }

    /** Makes all that was merged permanent. */
    public void commit() {
        if (transaction != null) {
            StorePools.requireRoom(source);
            transaction.commit();
            transaction = null;
            StorePools.committed(source);
            if (!StoreLane.isReading()) { // a page that reads through a writer has changed nothing
                source.changed();
            }
        }
    }

    /** Forgets all that was merged since the last commit. */
    public void rollback() {
        if (transaction != null) {
            transaction.rollback();
            transaction = null;
        }
        whole.clear();
        histories.clear();
    }

    @Override
    public void close() {
        try {
            rollback();
        } finally {
            session.close();
        }
    }
}
