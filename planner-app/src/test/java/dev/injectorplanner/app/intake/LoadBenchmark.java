package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Readings from a file into the store, all checks on, beside bare batched JDBC into the same table. Rows: {@code -Dload.rows}.
 * Seconds by the wall depend on what else the machine does; CPU seconds of this process (an embedded database is part of
 * it, a PostgreSQL server is not) hardly do.
 */
class LoadBenchmark {
    private static final int TRUCKS = 300;
    private static final int ROWS = Integer.getInteger("load.rows", 450_000);

    @TempDir
    private Path folder;

    @Test
    void loadsBesideBareInserts() throws Exception {
        System.out.println(
                "| database | rows | bare JDBC, s (CPU s) | load, s (CPU s) | share of the bare rate, by wall (by CPU) |");
        compare(
                "HSQLDB",
                StoreSettings.embedded(folder.resolve("bare")),
                StoreSettings.embedded(folder.resolve("data")));
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            StoreSettings settings = new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "");
            compare("PostgreSQL", settings, settings);
        }
    }

    private void compare(String name, StoreSettings bareStore, StoreSettings loadStore) throws Exception {
        Path file = readings();
        Took bare;
        try (Store store = Store.open(bareStore)) {
            fleet(store);
            bare = took(() -> bare(store));
            clear(store);
        }
        try (Store store = Store.open(loadStore)) {
            fleet(store);
            Took load = took(() -> {
                FileReport report = new Intake(store)
                        .load(List.of(file), LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT)
                        .get(0);
                assertThat(report.tables().get(0).added()).isEqualTo(ROWS);
            });
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %,d | %.1f (%.1f) | %.1f (%.1f) | %.0f %% (%.0f %%) |%n",
                    name,
                    ROWS,
                    bare.wall(),
                    bare.cpu(),
                    load.wall(),
                    load.cpu(),
                    100 * bare.wall() / load.wall(),
                    100 * bare.cpu() / load.cpu());
            clear(store);
        }
    }

    private interface Work {
        void run() throws Exception;
    }

    /** Seconds by the wall, and CPU seconds of this process. */
    private record Took(double wall, double cpu) {}

    private static Took took(Work work) throws Exception {
        OperatingSystemMXBean system =
                (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean(); // its CPU time is of the process
        long cpu = system.getProcessCpuTime();
        long start = System.nanoTime();
        work.run();
        return new Took((System.nanoTime() - start) / 1e9, (system.getProcessCpuTime() - cpu) / 1e9);
    }

    private void fleet(Store store) throws IOException {
        Path depots = write("depots.csv", """
                depot,name,time_zone,bays,labour_hours_per_day,work_days,labour_per_hour,overtime_per_hour
                N,North,UTC,2,16,Mon-Fri,90,130
                """);
        Path parts = write("parts.csv", "part,kind,supplier,price,lead_days\nI8,injector,S,400,5\n");
        Path families = write("engine_families.csv", """
                family,cylinders,banks,firing_order,cylinder_hours,coolant_l,glycol_percent,injector_part,road_failure_cost
                V8,8,left 1 3 5 7; right 2 4 6 8,1 2 7 3 4 5 6 8,0.7,38,50,I8,4000
                """);
        StringBuilder trucks = new StringBuilder("truck,depot,family,in_service_on\n");
        for (int i = 0; i < TRUCKS; i++) {
            trucks.append("T").append(i).append(",N,V8,2018-01-01\n");
        }
        assertThat(new Intake(store)
                        .load(
                                List.of(depots, parts, families, write("trucks.csv", trucks.toString())),
                                LoadSettings.of(Mode.GOOD_ROWS),
                                LoadListener.SILENT))
                .noneMatch(FileReport::anyRefused);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    /** By truck, then by time, as a telematics export has them. */
    private Path readings() throws IOException {
        Path file = folder.resolve("readings.csv");
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("truck,taken_at,odometer_km,engine_hours\n");
            for (int i = 0; i < ROWS; i++) {
                int truck = i / (ROWS / TRUCKS) % TRUCKS;
                int at = i % (ROWS / TRUCKS);
                out.write("T" + truck + "," + moment(at) + "," + (1_000 + at * 300) + ".5," + (20 + at * 5) + "\n");
            }
        }
        return file;
    }

    private static Instant moment(int at) {
        return Instant.parse("2020-01-01T06:00:00Z").plusSeconds(86_400L * at / 2);
    }

    private static void bare(Store store) throws SQLException {
        try (Connection connection = store.dataSource().getConnection()) {
            connection.setAutoCommit(false);
            try (PreparedStatement insert = connection.prepareStatement(
                    "insert into reading (id, truck, taken_at, odometer_km, engine_hours, meter_replaced) values (?, ?, ?, ?, ?, ?)")) {
                for (int i = 0; i < ROWS; i++) {
                    int truck = i / (ROWS / TRUCKS) % TRUCKS;
                    int at = i % (ROWS / TRUCKS);
                    insert.setLong(1, i + 1L);
                    insert.setString(2, "T" + truck);
                    insert.setObject(3, moment(at).atOffset(ZoneOffset.UTC));
                    insert.setDouble(4, 1_000.5 + at * 300);
                    insert.setDouble(5, 20.0 + at * 5);
                    insert.setBoolean(6, false);
                    insert.addBatch();
                    if (i % 2_000 == 1_999 || i == ROWS - 1) {
                        insert.executeBatch();
                        connection.commit();
                    }
                }
            }
        }
    }

    private static void clear(Store store) throws SQLException {
        try (Connection connection = store.dataSource().getConnection();
                var delete = connection.createStatement()) {
            delete.executeUpdate("delete from reading");
            if (!connection.getAutoCommit()) {
                connection.commit();
            }
        }
    }
}
