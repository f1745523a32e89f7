package dev.injectorplanner.app.kill;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreBackup;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Backups of an embedded store, killed at random moments; a PostgreSQL is backed up by its own tools, outside this program.
 * More of it: {@code -Dplanner.kill.times=20}.
 */
class KilledBackupTest {
    private static final int TIMES = Integer.getInteger("planner.kill.times", 2);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);
    private static final int LONGEST_MILLIS = 600;

    @TempDir
    private Path folder;

    /** Makes one backup after the other, each under a number. */
    static final class Backups {
        private Backups() {}

        public static void main(String[] args) {
            try (Store store = Store.open(KilledProcess.store(args))) {
                System.out.println("open");
                for (int number = 0; number < 1_000; number++) {
                    StoreBackup.make(store.dataSource(), Path.of(args[3], number + ".zip"));
                    System.out.println(number);
                    System.out.flush();
                }
            }
        }
    }

    @Test
    void a_backup_is_there_whole_or_not_at_all_and_the_store_is_unharmed() throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        StoreSettings data = StoreSettings.embedded(folder.resolve("data"));
        FleetSnapshot before = filled(data);
        for (int time = 0; time < TIMES; time++) {
            Path backups = Files.createDirectories(folder.resolve("backups" + time));
            int killAfter = 1 + random.nextInt(3);
            List<String> said = KilledProcess.run(
                    Backups.class,
                    data,
                    List.of(backups.toString()),
                    lines -> lines.size() == killAfter
                            ? Optional.of(Duration.ofMillis(random.nextInt(LONGEST_MILLIS)))
                            : Optional.empty());
            String when = "seed " + SEED + ", time " + time;
            List<Path> whole = zips(backups);
            assertThat(whole)
                    .as("every backup that was acknowledged, %s", when)
                    .hasSizeBetween(said.size() - 1, said.size());
            for (Path zip : whole) {
                Path restored = folder.resolve("restored" + time + zip.getFileName());
                StoreBackup.restore(zip, restored);
                assertThat(fleet(StoreSettings.embedded(restored))).as(when).isEqualTo(before);
            }
            assertThat(fleet(data)).as("the store after the kill, %s", when).isEqualTo(before);
            makesTheNextOverWhatWasLeft(data, backups.resolve(whole.size() + ".zip"));
        }
    }

    /** The same name again, where the killed backup left its unpacked files or half a file. */
    private static void makesTheNextOverWhatWasLeft(StoreSettings data, Path zip) throws Exception {
        try (Store store = Store.open(data)) {
            assertThat(StoreBackup.make(store.dataSource(), zip)).isPositive();
        }
        try (var left = Files.list(zip.getParent())) {
            assertThat(left).allMatch(path -> path.toString().endsWith(".zip"));
        }
    }

    private static List<Path> zips(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            return files.filter(path -> path.toString().endsWith(".zip")).toList();
        }
    }

    private FleetSnapshot filled(StoreSettings data) throws Exception {
        FleetSnapshot made =
                new FleetGenerator(DemoFleet.ofSize(12, 3)).generate().snapshot();
        Path files = Files.createDirectories(folder.resolve("files"));
        try (Store store = Store.open(data)) {
            new Intake(store)
                    .load(
                            FleetFiles.write(made, files),
                            LoadSettings.of(LoadSettings.Mode.GOOD_ROWS),
                            LoadListener.SILENT);
            return store.snapshot();
        }
    }

    private static FleetSnapshot fleet(StoreSettings settings) {
        try (Store store = Store.open(settings)) {
            return store.snapshot();
        }
    }
}
