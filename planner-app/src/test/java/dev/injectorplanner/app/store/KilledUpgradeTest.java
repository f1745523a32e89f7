package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.kill.KilledProcess;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Opening a store is killed while its schema is made or upgraded: when the log names a schema version, or soon after. Twenty
 * of each: {@code -Dplanner.kill.times=20}.
 */
class KilledUpgradeTest {
    private static final int TIMES = Integer.getInteger("planner.kill.times", 1);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);
    private static final int FROM = 4;
    private static final Pattern VERSION = Pattern.compile("to version \"(\\d+) ");

    private final SplittableRandom random = new SplittableRandom(SEED);

    @TempDir
    private Path folder;

    @Test
    void a_new_embedded_store_opens_after_a_kill() throws Exception {
        for (int time = 0; time < TIMES; time++) {
            StoreSettings place = StoreSettings.embedded(Files.createDirectories(folder.resolve("new" + time)));
            openAndKill(place, 1);
            try (Store store = Store.open(place)) {
                assertThat(Schema.version(store.dataSource())).isEqualTo(StoreOpening.NEWEST);
                fillAndRead(store, time);
            }
        }
    }

    @Test
    void an_embedded_store_of_an_earlier_version_opens_after_a_kill_with_all_its_rows() throws Exception {
        for (int time = 0; time < TIMES; time++) {
            Path place = folder.resolve("old" + time);
            OldStore.unpack(FROM, place);
            openAndKill(StoreSettings.embedded(place), FROM + 1);
            try (Store store = Store.open(StoreSettings.embedded(place))) {
                assertThat(Schema.version(store.dataSource())).isEqualTo(StoreOpening.NEWEST);
                assertThat(store.snapshot().readings())
                        .as("time " + time)
                        .isEqualTo(OneOfEach.fleet().readings());
                assertThat(store.snapshot().injectors())
                        .as("time " + time)
                        .isEqualTo(StoreUpgradeTest.earlierInjectors());
            }
        }
    }

    @Test
    void a_shared_database_opens_after_a_kill_new_or_of_an_earlier_version() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            for (int time = 0; time < TIMES; time++) {
                StoreSettings fresh = database(postgres, "new" + time);
                openAndKill(fresh, 1);
                try (Store store = Store.open(fresh)) {
                    fillAndRead(store, time);
                }
                StoreSettings old = database(postgres, "old" + time);
                makeOld(old);
                openAndKill(old, FROM + 1);
                try (Store store = Store.open(old)) {
                    assertThat(Schema.version(store.dataSource())).isEqualTo(StoreOpening.NEWEST);
                    assertThat(store.countDepots()).as("time " + time).isEqualTo(1);
                }
            }
        }
    }

    private static StoreSettings database(EmbeddedPostgres postgres, String name) throws Exception {
        try (Connection connection = postgres.getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
        }
        return new StoreSettings(postgres.getJdbcUrl("postgres", name), "postgres", "postgres");
    }

    private static void makeOld(StoreSettings settings) throws Exception {
        try (var pool = OldStore.pool(settings)) {
            Schema.migrateShared(pool, FROM);
            try (Connection connection = pool.getConnection();
                    var statement = connection.createStatement()) {
                statement.execute("insert into depot (depot, name, time_zone, bays, labour_hours_per_day, work_days,"
                        + " labour_per_hour, overtime_per_hour, overtime_hours_per_week)"
                        + " values ('North', 'North yard', 'Europe/Oslo', 2, 16, 'MONDAY,TUESDAY', 60, 90, 10)");
            }
        }
    }

    private static void fillAndRead(Store store, int time) {
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        assertThat(store.snapshot()).as("time " + time).isEqualTo(OneOfEach.fleet());
    }

    /** Half of the kills come at once when the log names the version, the others up to 0.6 s later: copies, renames, opening. */
    private void openAndKill(StoreSettings settings, int firstVersion) throws Exception {
        int killAt = firstVersion + random.nextInt(StoreOpening.NEWEST - firstVersion + 1);
        int delay = random.nextBoolean() ? 0 : random.nextInt(600);
        List<String> said = KilledProcess.run(
                OpensAStore.class,
                settings,
                List.of(),
                lines -> named(lines.get(lines.size() - 1)) == killAt
                        ? Optional.of(Duration.ofMillis(delay))
                        : Optional.empty());
        assertThat(said).as("version " + killAt + " is named").anyMatch(line -> named(line) == killAt);
    }

    /** The schema version that a line of the log begins, 0 where it names none. */
    private static int named(String line) {
        var version = VERSION.matcher(line);
        return version.find() ? Integer.parseInt(version.group(1)) : 0;
    }
}
