package dev.injectorplanner.app.start;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;

/** What is in the store, what a first plan needs, and what each missing table would add. */
public final class StoreNeeds {
    /**
     * One table.
     *
     * @param name as people call it
     * @param table name of the table of files
     * @param stored table of the store
     * @param needed whether there is no plan without it
     * @param adds what it adds to the plan
     */
    private record Known(String name, String table, String stored, boolean needed, String adds) {}

    private static final List<Known> ALL = List.of(
            new Known("Depots", "depots", "depot", true, "bays and hours a week"),
            new Known("Parts", "parts", "part", true, "injector prices"),
            new Known(
                    "Engine families",
                    "engine_families",
                    "engine_family",
                    true,
                    "cylinders and banks; or take a starter kit"),
            new Known(
                    "Access steps",
                    "access",
                    "access_step",
                    false,
                    "hours that cylinders share when done in one visit"),
            new Known("Trucks", "trucks", "truck", true, "the trucks to plan for"),
            new Known("Injectors", "injectors", "injector", true, "the age of each injector; or load replacements"),
            new Known("Readings", "readings", "reading", true, "km a week: when each injector comes due"),
            new Known("Faults", "faults", "fault", false, "which injectors fail sooner; safety items"),
            new Known(
                    "Cylinder tests",
                    "cylinder_tests",
                    "cylinder_test",
                    false,
                    "defects found before they strand a truck"),
            new Known("Job parts", "job_parts", "job_part", false, "kits, order list and bills beyond the injectors"),
            new Known("Stock", "stock", "stock", false, "what is short, by when, and for which visit"),
            new Known("Cannot be spared", "away", "away", false, "weeks in which a truck stays out of the bay"),
            new Known(
                    "Duty groups",
                    "duty_groups",
                    "duty_group",
                    false,
                    "trucks that must stay on the road; cost of a day off it"),
            new Known(
                    "Scheduled service",
                    "intervals",
                    "interval_task",
                    false,
                    "filters and services done in the same visit"));

    private final StoreSql sql;

    public StoreNeeds(Store store) {
        this.sql = new StoreSql(store.dataSource());
    }

    /**
     * A table as it is in this store.
     *
     * @param rows stored rows
     */
    public record Need(String name, String table, boolean needed, String adds, long rows) {
        public boolean missing() {
            return rows == 0;
        }
    }

    /** All tables that matter for a plan, those needed first. */
    public List<Need> list() {
        return sql.inTransaction(connection -> {
            List<Need> needs = new ArrayList<>();
            for (Known known : ALL) {
                try (PreparedStatement count = connection.prepareStatement("select count(*) from " + known.stored());
                        ResultSet row = count.executeQuery()) {
                    row.next();
                    needs.add(new Need(known.name(), known.table(), known.needed(), known.adds(), row.getLong(1)));
                }
            }
            return needs;
        });
    }

    /** Whether there is a truck to plan for. */
    public boolean anyTruck() {
        return !sql.list("select truck from truck fetch first 1 rows only", row -> row.getString(1))
                .isEmpty();
    }

    /** Whether a first plan is possible. */
    public boolean enough() {
        return list().stream().noneMatch(need -> need.needed() && need.missing());
    }
}
