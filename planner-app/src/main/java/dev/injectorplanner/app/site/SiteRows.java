package dev.injectorplanner.app.site;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Changes rows of small tables one by one. A row is read by the rules of files; who
 * changes a row says which one he saw, and nothing that somebody else changed meanwhile is overwritten. Files that are
 * loaded in the same moment do not take turns with this.
 */
public final class SiteRows {
    /** The field of a sentence that concerns the whole row. */
    public static final String WHOLE_ROW = "";

    private final Store store;
    private final Intake intake;
    private final StoreSql sql;
    private final InstantSource clock;

    public SiteRows(Store store, Intake intake, InstantSource clock) {
        this.store = store;
        this.intake = intake;
        this.sql = new StoreSql(store.dataSource());
        this.clock = clock;
    }

    /** All rows of a table, by key. */
    public List<SiteRow> list(SiteTable table) {
        return list(table.table()).stream().sorted(order(table)).toList();
    }

    /** By key; access steps of a family as they are taken off. */
    private static Comparator<SiteRow> order(SiteTable table) {
        Comparator<SiteRow> byKey = Comparator.comparing(SiteRow::key);
        return table == SiteTable.ACCESS
                ? Comparator.<SiteRow, String>comparing(row -> row.cells().getOrDefault("family", ""))
                        .thenComparingInt(row -> Integer.parseInt(row.cells().getOrDefault("order", "0")))
                        .thenComparing(byKey)
                : byKey;
    }

    private <R> List<SiteRow> list(Table<R> table) {
        try (StoreWriter reader = store.writer()) {
            return reader.all(table.rowType()).stream()
                    .map(row -> row(table, row))
                    .toList();
        }
    }

    private static <R> SiteRow row(Table<R> table, R record) {
        Map<String, String> cells = new LinkedHashMap<>();
        List<String> written = table.cells(record);
        for (int at = 0; at < written.size(); at++) {
            cells.put(table.columns().get(at).name(), written.get(at));
        }
        return new SiteRow(keyOf(table, cells), cells, mark(written));
    }

    /** A digest of the cells: it travels in forms, which would turn line breaks into others. */
    private static String mark(List<String> cells) {
        try {
            byte[] text = String.join("\u001f", cells).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is part of every Java", e);
        }
    }

    /** A row by its key. */
    public Optional<SiteRow> find(SiteTable table, String key) {
        return list(table.table()).stream().filter(row -> row.key().equals(key)).findFirst();
    }

    /**
     * Adds or changes a row, with a note in the audit trail.
     *
     * @param cells what was typed, by heading; a heading may name miles or US gallons
     * @param key of the row to change, or null to add one
     * @param seen the mark of the row that the person saw; empty for a new one
     * @return what is wrong, a sentence by column, or by {@link #WHOLE_ROW}; empty where it was done
     */
    public synchronized Map<String, String> save(
            SiteTable table, Map<String, String> cells, @Nullable String key, String seen, String who) {
        return sql.inTransaction(connection -> {
            SiteSettings.takeTurn(connection);
            SiteRow before = key == null ? null : find(table, key).orElse(null);
            String stands = before == null ? "" : before.mark();
            if (!stands.equals(seen)) {
                SiteSettings.giveBackTurn(connection);
                return Map.of(WHOLE_ROW, meanwhile(before));
            }
            Map<String, String> row = new LinkedHashMap<>(cells);
            if (before != null) {
                table.table()
                        .keyColumns()
                        .forEach(column -> row.put(column, before.cells().get(column)));
            }
            Map<String, String> wrong = before == null ? twice(table, row) : RowFit.check(this, table, row);
            if (wrong.isEmpty()) {
                wrong = take(table, row);
            }
            if (wrong.isEmpty()) {
                note(connection, table, keyOf(table.table(), row), before, who);
            } else {
                SiteSettings.giveBackTurn(connection);
            }
            return wrong;
        });
    }

    private static String meanwhile(@Nullable SiteRow now) {
        return (now == null ? "Somebody removed this row" : "Somebody changed this row")
                + " after the page was opened; nothing was overwritten. Fix: "
                + (now == null
                        ? "add it again if it is still needed."
                        : "compare with the current row, " + words(now.cells()) + ", and save again.");
    }

    /** A new row must not change one that is there. */
    private Map<String, String> twice(SiteTable table, Map<String, String> row) {
        String key = keyOf(table.table(), row);
        List<String> columns = table.table().keyColumns();
        return list(table).stream()
                .filter(each -> each.key().equalsIgnoreCase(key))
                .findFirst()
                .map(each -> Map.of(
                        columns.get(columns.size() - 1),
                        "“" + each.key() + "” already exists. Fix: change that one, or choose another name."))
                .orElse(Map.of());
    }

    /** {@code K8, intake off}; a rule of no family is of all. */
    private static String keyOf(Table<?> table, Map<String, String> cells) {
        return String.join(
                ", ",
                table.keyColumns().stream()
                        .map(column -> cells.getOrDefault(column, "").strip())
                        .map(cell -> cell.isEmpty() ? "all" : cell)
                        .toList());
    }

    private Map<String, String> take(SiteTable siteTable, Map<String, String> row) {
        Table<?> table = siteTable.table();
        Map<String, String> cells = new LinkedHashMap<>(row);
        table.columns().stream()
                .filter(column ->
                        column.required() && column.headings().stream().noneMatch(cells::containsKey))
                .forEach(column -> cells.put(column.headings().get(0), ""));
        FileReport report = intake.loadRows(
                table, new GivenRows(table.name(), List.copyOf(cells.keySet()), List.of(List.copyOf(cells.values()))));
        if (report.refusal() != null) {
            return Map.of(WHOLE_ROW, report.refusal());
        }
        Map<String, String> wrong = new LinkedHashMap<>();
        for (Complaint complaint : report.complaints()) {
            String column =
                    table.findColumn(complaint.column()).map(Column::name).orElse(WHOLE_ROW);
            wrong.putIfAbsent(
                    column, "“" + complaint.value() + "” " + complaint.reason() + ". Fix: " + complaint.fix() + ".");
        }
        return wrong;
    }

    private void note(Connection connection, SiteTable table, String key, @Nullable SiteRow before, String who)
            throws SQLException {
        Map<String, String> now = list(table).stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .map(SiteRow::cells)
                .orElse(Map.of());
        Map<String, String> was = before == null ? Map.of() : before.cells();
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        now.forEach((column, cell) -> {
            String old = was.getOrDefault(column, "");
            if (!cell.equals(old)) {
                left.add(column + " " + (old.isEmpty() ? "none" : old));
                right.add(column + " " + (cell.isEmpty() ? "none" : cell));
            }
        });
        if (!right.isEmpty()) {
            SiteSettings.noteChange(connection);
            write(
                    connection,
                    before == null ? "add a row" : "change a row",
                    table,
                    key,
                    before == null ? "" : String.join("; ", left),
                    String.join("; ", right),
                    who);
        }
    }

    private void write(
            Connection connection, String what, SiteTable table, String key, String before, String after, String who)
            throws SQLException {
        AuditTrail.write(connection, clock.instant(), who, what, table.table().name() + ": " + key, before, after);
    }

    private static String words(Map<String, String> cells) {
        return String.join(
                "; ",
                cells.entrySet().stream()
                        .map(cell -> cell.getKey() + " " + (cell.getValue().isEmpty() ? "none" : cell.getValue()))
                        .toList());
    }

    /**
     * Removes a row to which nothing refers, with a note in the audit trail.
     *
     * @param seen the mark of the row that the person saw
     * @return what prevents it, or empty where it was done
     */
    public synchronized Optional<String> remove(SiteTable table, String key, String seen, String who) {
        try {
            return removed(table, key, seen, who);
        } catch (ReferredToException e) {
            return Optional.of("“" + key + "” cannot be removed: past records refer to it. Fix: leave it.");
        }
    }

    private Optional<String> removed(SiteTable table, String key, String seen, String who) {
        return sql.inTransaction(connection -> {
            SiteSettings.takeTurn(connection);
            Optional<String> against = removed(connection, table, key, seen, who);
            if (against.isPresent()) {
                SiteSettings.giveBackTurn(connection);
            }
            return against;
        });
    }

    private Optional<String> removed(Connection connection, SiteTable table, String key, String seen, String who)
            throws SQLException {
        SiteRow row = find(table, key).orElse(null);
        if (row == null || !row.mark().equals(seen)) {
            return Optional.of(meanwhile(row));
        }
        Object[] values = storedKey(table, row);
        List<String> uses = new ArrayList<>();
        for (Map.Entry<String, String> question : table.referrers().entrySet()) {
            long count = StoreSql.list(connection, question.getValue(), found -> found.getLong(1), values)
                    .get(0);
            if (count > 0) {
                uses.add(count + " " + question.getKey());
            }
        }
        return uses.isEmpty()
                ? delete(connection, table, row, values, who)
                : Optional.of("“" + key + "” cannot be removed: " + String.join(", ", uses)
                        + " refer to it. Fix: remove or change those first.");
    }

    private Optional<String> delete(Connection connection, SiteTable table, SiteRow row, Object[] values, String who)
            throws SQLException {
        try {
            StoreSql.update(connection, table.deletion(), values);
        } catch (SQLException e) {
            if (String.valueOf(e.getSQLState()).startsWith("23")) {
                throw new ReferredToException();
            }
            throw e;
        }
        SiteSettings.noteChange(connection);
        write(connection, "remove a row", table, row.key(), words(row.cells()), "", who);
        return Optional.empty();
    }

    private static Object[] storedKey(SiteTable table, SiteRow row) {
        return table.table().keyColumns().stream()
                .map(column -> column.equals("rule")
                        ? row.cells().getOrDefault(column, "").toUpperCase(Locale.ROOT)
                        : row.cells().getOrDefault(column, ""))
                .toArray();
    }

    /** Rows refer to it that were not asked for. */
    private static final class ReferredToException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
