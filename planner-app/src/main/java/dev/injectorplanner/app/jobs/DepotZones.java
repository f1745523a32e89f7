package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.store.StoreSql;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.sql.DataSource;

/** The depots and their zones, read afresh each time: both may change while the program runs. */
public final class DepotZones {
    private final StoreSql sql;

    public DepotZones(DataSource pool) {
        this.sql = new StoreSql(pool);
    }

    /** Depots with their zones, by name. */
    public Map<String, ZoneId> zones() {
        Map<String, ZoneId> zones = new TreeMap<>();
        List<Map.Entry<String, ZoneId>> rows = sql.list(
                "select depot, time_zone from depot", row -> Map.entry(row.getString(1), ZoneId.of(row.getString(2))));
        rows.forEach(row -> zones.put(row.getKey(), row.getValue()));
        return zones;
    }

    /** Zone of a depot; of the fleet where it is empty. */
    public ZoneId zoneOf(String depot) {
        Map<String, ZoneId> zones = zones();
        ZoneId zone = zones.get(depot);
        return zone == null ? fleet(zones) : zone;
    }

    /** Jobs of the whole fleet keep the time of most depots; of those alike, of the first by name; UTC without depots. */
    static ZoneId fleet(Map<String, ZoneId> zones) {
        Map<ZoneId, Long> counts =
                zones.values().stream().collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return zones.values().stream()
                .distinct()
                .max(Comparator.<ZoneId>comparingLong(zone -> counts.getOrDefault(zone, 0L))
                        .thenComparing(ZoneId::getId, Comparator.reverseOrder()))
                .orElse(ZoneOffset.UTC);
    }
}
