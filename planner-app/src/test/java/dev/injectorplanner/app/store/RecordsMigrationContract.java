package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.zip.CRC32;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;

/** The step to records that stay true keeps every row and every value of a store of the last version. */
abstract class RecordsMigrationContract {
    /** Schema version before the step. */
    static final int BEFORE = 13;

    private static final List<String> ROWS = List.of(
            "insert into depot values ('North', 'North yard', 'Europe/Riga', 2, 24, 'Mon-Fri', 80, 120, 6)",
            "insert into part values ('INJ', 'injector', 'INJECTOR', 'Sons', 410, 120, 30, 10, 15, 1, 0, 12, 100000, null)",
            "insert into engine_family (family, cylinders, banks, firing_order, cylinder_hours, coolant_litres, glycol_percent,"
                    + " injector_part, road_failure_cost) values ('Four', 4, 'inline 1 2 3 4', '1 3 4 2', 0.8, 28.5, 50, 'INJ', 3900)",
            "insert into truck values ('T-1', '1M8GDM9AXKP042788', 'North', 'Four', null, date '2023-03-02', null, null)",
            "insert into access_step (id, family, step, step_order, hours, cylinders, drains_coolant_percent, cautions)"
                    + " values (1, 'Four', 'cowl', 1, 1.5, '3 4', 0, '')",
            "insert into job_part values (1, 'Four', 'STEP', 'cowl', 'INJ', 1, 0.5, 'cowl')",
            "insert into job_part values (2, 'Four', 'VISIT', null, 'INJ', 2, 1, '')",
            "insert into injector values (1, 'T-1', 1, 'INJ', 'S1', 'C1', 'REMAN', date '2024-03-02', 10000.5, 120.25,"
                    + " date '2025-03-02', 90000, 1500, 'FAILED', date '2025-03-02')",
            "insert into injector values (2, 'T-1', 1, 'INJ', null, null, 'NEW', date '2025-03-02', null, null, null, null,"
                    + " null, null, date '9999-12-31')",
            "insert into close_out values (1, 'form', 'T-1', 'North', '2025-W09', date '2025-03-02', 1, null, '', 6.5, 90000,"
                    + " 1500, false, 'clip', '', null, current_timestamp, '', current_timestamp, current_timestamp, 'Kim')",
            "insert into close_out_cylinder values (1, 1, true, 'FAILED', 'S1', date '2024-03-02', 'INJ', 'S2', null, 'NEW',"
                    + " false, 'NONE', '')");

    abstract DataSource empty() throws Exception;

    abstract void migrate(DataSource store, int version);

    @Test
    void every_row_and_value_of_the_last_version_is_there_afterwards() throws Exception {
        DataSource store = empty();
        migrate(store, BEFORE);
        try (Connection connection = store.getConnection();
                var statement = connection.createStatement()) {
            for (String sql : ROWS) {
                statement.executeUpdate(sql);
            }
            if (!connection.getAutoCommit()) {
                connection.commit();
            }
        }
        Map<String, List<String>> columns = columns(store);
        Map<String, String> before = sums(store, columns);
        migrate(store, StoreOpening.NEWEST);
        columns.get("truck")
                .replaceAll(name -> name.equalsIgnoreCase("vin") ? "vin_if_known" : name); // may be missing now
        assertThat(sums(store, columns)).isEqualTo(before);
        assertThat(before).hasEntrySatisfying("injector", sum -> assertThat(sum).startsWith("2 rows"));
    }

    private static Map<String, List<String>> columns(DataSource store) throws SQLException {
        Map<String, List<String>> columns = new LinkedHashMap<>();
        try (Connection connection = store.getConnection()) {
            for (String table : List.of(
                    "depot",
                    "part",
                    "truck",
                    "access_step",
                    "job_part",
                    "injector",
                    "close_out",
                    "close_out_cylinder")) {
                try (var statement = connection.createStatement();
                        ResultSet rows = statement.executeQuery("select * from " + table)) {
                    List<String> names = new ArrayList<>();
                    for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                        names.add(rows.getMetaData().getColumnName(i));
                    }
                    columns.put(table, names);
                }
            }
        }
        return columns;
    }

    private static Map<String, String> sums(DataSource store, Map<String, List<String>> columns) throws SQLException {
        Map<String, String> sums = new LinkedHashMap<>();
        try (Connection connection = store.getConnection()) {
            for (Map.Entry<String, List<String>> table : columns.entrySet()) {
                TreeSet<String> lines = new TreeSet<>();
                try (var statement = connection.createStatement();
                        ResultSet rows = statement.executeQuery(
                                "select " + String.join(", ", table.getValue()) + " from " + table.getKey())) {
                    while (rows.next()) {
                        StringBuilder line = new StringBuilder();
                        for (int i = 1; i <= table.getValue().size(); i++) {
                            line.append(rows.getString(i)).append('|');
                        }
                        lines.add(line.toString());
                    }
                }
                CRC32 sum = new CRC32();
                lines.forEach(line -> sum.update(line.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
                sums.put(table.getKey(), lines.size() + " rows, checksum " + sum.getValue());
            }
        }
        return sums;
    }
}
