package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.kill.Databases;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.TableWriter;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A load into either database, killed at random moments. More of it: {@code -Dplanner.kill.rows=200000
 * -Dplanner.kill.times=20}.
 */
class KilledLoadTest {
    private static final int ROWS = Integer.getInteger("planner.kill.rows", 30_000);
    private static final int TIMES = Integer.getInteger("planner.kill.times", 2);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);

    @TempDir
    private Path folder;

    @Test
    void the_embedded_store_has_what_was_acknowledged_and_nothing_by_halves() throws Exception {
        try (Databases databases = Databases.embedded(folder)) {
            killed(databases);
        }
    }

    @Test
    void a_shared_database_has_what_was_acknowledged_and_nothing_by_halves() throws Exception {
        try (Databases databases = Databases.shared()) {
            killed(databases);
        }
    }

    private void killed(Databases databases) throws Exception {
        List<Reading> readings = IntStream.range(0, ROWS)
                .mapToObj(i -> new Reading(
                        i % 2 == 0 ? "T-1" : "T-2",
                        OneOfEach.MOMENT.plusSeconds(60L * (i + 100)),
                        i * 1.5,
                        i * 0.02,
                        false))
                .toList();
        Path file = folder.resolve("more readings.csv");
        TableWriter.write(file, Tables.READINGS, readings);
        var all = new HashSet<>(readings);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int time = 0; time < TIMES; time++) {
            StoreSettings data = databases.next();
            fill(data);
            long acknowledged = loadAndKill(data, file, random);
            try (Store store = Store.open(data)) {
                var stored = new HashSet<>(store.snapshot().readings());
                stored.removeAll(OneOfEach.fleet().readings());
                String when = "seed " + SEED + ", time " + time;
                assertThat(all.containsAll(stored)).as("no half row, " + when).isTrue();
                assertThat(stored.containsAll(readings.subList(0, (int) acknowledged)))
                        .as("every acknowledged row, " + when)
                        .isTrue();
                FileReport again = load(store, List.of(file)).get(0);
                assertThat(again.tables().get(0).unchanged()).isEqualTo(stored.size());
                assertThat(again.tables().get(0).added()).isEqualTo(ROWS - stored.size());
                assertThat(store.snapshot().readings()).hasSize(ROWS + 2);
                assertThat(new HashSet<>(store.snapshot().readings()).containsAll(all))
                        .isTrue();
            }
        }
    }

    private void fill(StoreSettings data) throws IOException {
        Path files = Files.createDirectories(folder.resolve("files"));
        try (Store store = Store.open(data)) {
            assertThat(load(store, FleetFiles.write(OneOfEach.fleet(), files))).noneMatch(FileReport::anyRefused);
        }
    }

    private static List<FileReport> load(Store store, List<Path> files) {
        return new Intake(store).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }

    /** Rows that the killed process had acknowledged. */
    private static long loadAndKill(StoreSettings data, Path file, SplittableRandom random) throws Exception {
        long killAfter = random.nextLong(ROWS);
        List<String> said = KilledProcess.run(
                LoadInAnotherProcess.class,
                data,
                List.of(file.toString()),
                lines -> acknowledged(lines) > killAfter
                        ? Optional.of(Duration.ofMillis(random.nextInt(40))) // into the next batch
                        : Optional.empty());
        assertThat(said).startsWith("open");
        return acknowledged(said);
    }

    private static long acknowledged(List<String> said) {
        return said.size() < 2 ? 0 : Long.parseLong(said.get(said.size() - 1));
    }
}
