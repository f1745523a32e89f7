package dev.injectorplanner.app.alert;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the nightly update costs beside this many open alerts: the first night raises all, the next finds each with newer
 * evidence, the next finds nothing new, the last clears a tenth. {@code -Dalerts.sizes=10000,100000,1000000}.
 */
@Tag("benchmark")
class AlertBenchmark {
    private static final Instant AT = Instant.parse("2026-03-02T02:00:00Z");
    private static final int PER_TRUCK = 16;

    @TempDir
    private Path folder;

    @Test
    void the_nightly_update_beside_many_open_alerts() throws Exception {
        System.out.printf(
                "%-10s %9s %9s %11s %11s %13s %10s%n",
                "database", "open", "raise, s", "refresh, s", "nothing, s", "clear 1/10, s", "heap, MB");
        for (String size :
                System.getProperty("alerts.sizes", "10000,100000,1000000").split(",")) {
            int open = Integer.parseInt(size);
            try (Store store = Store.open(StoreSettings.embedded(folder.resolve(size)))) {
                measure("HSQLDB", store, open);
            }
            try (EmbeddedPostgres postgres = EmbeddedPostgres.start();
                    Store store = Store.open(
                            new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres"))) {
                measure("PostgreSQL", store, open);
            }
        }
    }

    private static void measure(String database, Store store, int open) {
        FleetSnapshot fleet = fleet(open / PER_TRUCK);
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, fleet);
            writer.commit();
        }
        Alerts alerts = new Alerts(store.dataSource());
        Planned first = planned(fleet, open, "4 faults in 30 days");
        Planned next = planned(fleet, open, "5 faults in 30 days");
        Planned fewer = planned(fleet, open - open / 10, "5 faults in 30 days");
        double raise = seconds(() -> alerts.update(first, AT).raised(), open);
        double refresh = seconds(() -> alerts.update(next, AT).refreshed(), open);
        double nothing = seconds(() -> alerts.update(next, AT).unchanged(), open);
        double clear = seconds(() -> alerts.update(fewer, AT).cleared(), open / 10);
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                "%-10s %,9d %9.1f %11.1f %11.1f %13.1f %10d%n",
                database,
                open,
                raise,
                refresh,
                nothing,
                clear,
                (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000);
    }

    private static double seconds(Supplier<Integer> update, int expected) {
        long start = System.nanoTime();
        assertThat(update.get()).isEqualTo(expected);
        return (System.nanoTime() - start) / 1e9;
    }

    private static Planned planned(FleetSnapshot fleet, int open, String evidence) {
        List<DueItem> dueItems = IntStream.range(0, open)
                .mapToObj(i -> PlanByHand.item(
                        "B-" + i / PER_TRUCK, 1 + i % PER_TRUCK, evidence, PlanByHand.DAY.plusDays(i % 90)))
                .toList();
        return PlanByHand.of(fleet, PlanByHand.DAY, dueItems, List.of());
    }

    private static FleetSnapshot fleet(int trucks) {
        FleetSnapshot one = OneOfEach.fleet();
        List<Truck> all = new ArrayList<>(one.trucks());
        for (int i = 0; i < trucks; i++) {
            all.add(new Truck(
                    "B-" + i,
                    new Vin("WDB99%012d".formatted(i)),
                    "North",
                    "Four",
                    null,
                    PlanByHand.DAY.minusYears(3),
                    null,
                    null));
        }
        return new FleetSnapshot(
                one.depots(),
                one.capacity(),
                one.engineFamilies(),
                one.access(),
                one.dutyGroups(),
                all,
                one.injectors(),
                one.readings(),
                one.faults(),
                one.cylinderTests(),
                one.parts(),
                one.jobParts(),
                one.stock(),
                one.purchaseLines(),
                one.away(),
                one.intervals(),
                one.rules());
    }
}
