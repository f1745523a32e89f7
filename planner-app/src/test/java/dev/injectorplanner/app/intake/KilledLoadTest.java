package dev.injectorplanner.app.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.imports.TableWriter;
import dev.injectorplanner.imports.table.Tables;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A load into the embedded store, killed at random moments. More of it: {@code -Dplanner.kill.rows=200000
 * -Dplanner.kill.times=20}.
 */
class KilledLoadTest {
    private static final int ROWS = Integer.getInteger("planner.kill.rows", 30_000);
    private static final int TIMES = Integer.getInteger("planner.kill.times", 2);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);

    @TempDir
    private Path folder;

    @Test
    void what_was_acknowledged_is_there_and_nothing_by_halves() throws Exception {
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
            Path data = folder.resolve("data" + time);
            fill(data);
            long acknowledged = loadAndKill(data, file, random);
            try (Store store = Store.open(StoreSettings.embedded(data))) {
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

    private void fill(Path data) throws IOException {
        Path files = Files.createDirectories(folder.resolve("files"));
        try (Store store = Store.open(StoreSettings.embedded(data))) {
            assertThat(load(store, FleetFiles.write(OneOfEach.fleet(), files))).noneMatch(FileReport::anyRefused);
        }
    }

    private static List<FileReport> load(Store store, List<Path> files) {
        return new Intake(store).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
    }

    /** Rows that the killed process had acknowledged. */
    private static long loadAndKill(Path data, Path file, SplittableRandom random) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        LoadInAnotherProcess.class.getName(),
                        data.toString(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        long killAfter = random.nextLong(ROWS);
        long acknowledged = 0;
        try (BufferedReader lines = process.inputReader()) {
            assertThat(lines.readLine()).isEqualTo("open");
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                acknowledged = Long.parseLong(line);
                if (acknowledged > killAfter) {
                    Thread.sleep(random.nextInt(40)); // into the next batch
                    process.toHandle().destroyForcibly(); // SIGKILL on Linux; leaves our end of the pipe open
                }
            }
        }
        process.waitFor();
        return acknowledged;
    }
}
