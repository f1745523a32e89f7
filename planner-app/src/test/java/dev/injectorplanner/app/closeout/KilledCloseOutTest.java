package dev.injectorplanner.app.closeout;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.kill.Databases;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.StockLine;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Close-outs into either database, killed at a random moment. More of it: {@code -Dplanner.kill.times=20}. */
class KilledCloseOutTest {
    private static final int TIMES = Integer.getInteger("planner.kill.times", 1);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);

    @TempDir
    private Path folder;

    @Test
    void in_the_embedded_store_a_truck_is_closed_out_whole_or_not_at_all() throws Exception {
        try (Databases databases = Databases.embedded(folder)) {
            killed(databases);
        }
    }

    @Test
    void in_a_shared_database_a_truck_is_closed_out_whole_or_not_at_all() throws Exception {
        try (Databases databases = Databases.shared()) {
            killed(databases);
        }
    }

    private void killed(Databases databases) throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int time = 0; time < TIMES; time++) {
            StoreSettings data = databases.next();
            FleetSnapshot before;
            try (var application = DemoStore.load(data, folder.resolve("files" + time))) {
                before = application.store().snapshot();
            }
            List<String> acknowledged = closeOutAndKill(data, random);
            try (Store store = Store.open(data)) {
                wholeOrNot(store, before, acknowledged, "seed " + SEED + ", time " + time);
            }
        }
    }

    private static void wholeOrNot(Store store, FleetSnapshot before, List<String> acknowledged, String when) {
        FleetSnapshot after = store.snapshot();
        CloseOuts closeOuts = new CloseOuts(store);
        int done = 0;
        for (String truck : DemoStore.trucksWithEight(before)) {
            List<CloseOut> kept = closeOuts.ofTruck(truck);
            if (kept.isEmpty()) {
                assertThat(acknowledged).as(when).doesNotContain(truck);
                assertThat(DemoStore.open(after, truck)).as(when).isEqualTo(DemoStore.open(before, truck));
            } else {
                done++;
                assertThat(DemoStore.open(after, truck))
                        .as(when)
                        .hasSize(8)
                        .allMatch(row -> row.fittedOn().equals(DemoStore.TODAY));
                assertThat(kept.get(0).cylinders()).as(when).hasSize(8);
                assertThat(kept.get(0).used()).as(when).isNotEmpty();
            }
        }
        assertThat(done).as(when).isBetween(acknowledged.size(), acknowledged.size() + 1);
        double taken = DemoStore.trucksWithEight(before).stream()
                .flatMap(truck -> closeOuts.ofTruck(truck).stream())
                .flatMap(kept -> kept.used().stream())
                .mapToDouble(CloseOut.Taken::taken)
                .sum();
        assertThat(pieces(before) - pieces(after)).as(when).isEqualTo(taken);
    }

    private static double pieces(FleetSnapshot fleet) {
        return fleet.stock().stream().mapToDouble(StockLine::onHand).sum();
    }

    /** Trucks whose close-out was acknowledged. */
    private static List<String> closeOutAndKill(StoreSettings data, SplittableRandom random) throws Exception {
        int killAfter = 2 + random.nextInt(10);
        List<String> said = KilledProcess.run(
                CloseOutInAnotherProcess.class,
                data,
                List.of(),
                lines -> lines.size() - 1 == killAfter
                        ? Optional.of(Duration.ofMillis(random.nextInt(15))) // into the next one
                        : Optional.empty());
        assertThat(said).startsWith("open");
        return said.subList(1, said.size());
    }
}
