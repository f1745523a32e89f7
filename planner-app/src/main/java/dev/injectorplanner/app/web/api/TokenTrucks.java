package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.store.StoreSql;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Trucks that a token may ask for. One of another depot is answered like one that is not there. */
record TokenTrucks(StoreSql sql) {
    private record Place(String depot, ZoneId zone) {}

    /**
     * The zone of a truck's depot.
     *
     * @param depot the one depot that may be seen, or null for all
     * @throws ApiRefusal where the truck is not known there
     */
    ZoneId zoneOf(String truck, @Nullable String depot) {
        return sql.inTransaction(connection -> zoneOf(connection, truck, depot));
    }

    static ZoneId zoneOf(Connection connection, String truck, @Nullable String depot) throws SQLException {
        List<Place> places = StoreSql.list(
                connection,
                "select d.depot, d.time_zone from truck t join depot d on d.depot = t.depot where t.truck = ?",
                row -> new Place(row.getString(1), ZoneId.of(row.getString(2))),
                truck);
        if (places.isEmpty() || depot != null && !places.get(0).depot().equals(depot)) {
            throw new ApiRefusal(
                    404,
                    "No such truck",
                    "Truck \"" + truck
                            + "\" is not known, or this token does not cover its depot. Fix: check the name.",
                    List.of());
        }
        return places.get(0).zone();
    }
}
