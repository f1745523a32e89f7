package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.units.SiteForm;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** A truck's readings and faults, a page at a time, in the order in which they came in. */
public final class RowPages {
    private final StoreSql sql;

    public RowPages(DataSource store) {
        this.sql = new StoreSql(store);
    }

    /** Readings of a truck; {@code depot} is the one depot that may be seen, or null for all. */
    public Map<String, Object> readings(String truck, @Nullable String depot, Cursor cursor, SiteForm form) {
        return page(
                "select id, truck, taken_at, odometer_km, engine_hours, meter_replaced from reading",
                truck,
                depot,
                cursor,
                row -> {
                    Map<String, Object> fields = start(row, "taken_at");
                    AnswerUnits.distance(fields, "odometer", row.getObject("odometer_km"), form);
                    fields.put("engine_hours", row.getObject("engine_hours"));
                    fields.put("meter_replaced", row.getBoolean("meter_replaced"));
                    return fields;
                });
    }

    /** Faults of a truck, as above. */
    public Map<String, Object> faults(String truck, @Nullable String depot, Cursor cursor, SiteForm form) {
        return page(
                "select id, truck, seen_at, code, cylinder, occurrences, odometer_km, last_seen_at from fault",
                truck,
                depot,
                cursor,
                row -> {
                    Map<String, Object> fields = start(row, "seen_at");
                    fields.put("code", row.getString("code"));
                    fields.put("cylinder", row.getObject("cylinder"));
                    fields.put("count", row.getInt("occurrences"));
                    AnswerUnits.distance(fields, "odometer", row.getObject("odometer_km"), form);
                    Instant last = StoreSql.instant(row, "last_seen_at");
                    fields.put("last_seen_at", last == null ? null : last.toString());
                    return fields;
                });
    }

    private record Numbered(long id, Map<String, Object> fields) {}

    private Map<String, Object> page(
            String select,
            String truck,
            @Nullable String depot,
            Cursor cursor,
            StoreSql.RowReader<Map<String, Object>> reader) {
        List<Numbered> rows = sql.inTransaction(connection -> {
            TokenTrucks.zoneOf(connection, truck, depot);
            return StoreSql.list(
                    connection,
                    select + " where truck = ? and id > ? order by id limit " + (cursor.most() + 1),
                    row -> new Numbered(row.getLong("id"), reader.read(row)),
                    truck,
                    cursor.after());
        });
        boolean more = rows.size() > cursor.most();
        List<Numbered> shown = more ? rows.subList(0, cursor.most()) : rows;
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("items", shown.stream().map(Numbered::fields).toList());
        page.put("next", more ? Cursor.text(shown.get(shown.size() - 1).id()) : null);
        return page;
    }

    private static Map<String, Object> start(ResultSet row, String moment) throws SQLException {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("truck", row.getString("truck"));
        fields.put(moment, StoreSql.moment(row, moment).toString());
        return fields;
    }
}
