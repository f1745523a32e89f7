package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stores of earlier versions, whole and cut off, without other processes; {@link KilledUpgradeTest} kills real ones. */
class StoreUpgradeTest {
    /** Schema version from which a store holds all rows of {@link OneOfEach}. */
    private static final int SEVERAL_FITTINGS_A_DAY = 14;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(ints = {4, 7, 9, 10, OldStore.LAST_RELEASE})
    void a_store_of_an_earlier_version_opens_with_all_its_rows(int version) throws Exception {
        OldStore.unpack(version, folder);
        assertOpens(
                folder,
                version < SEVERAL_FITTINGS_A_DAY
                        ? earlierInjectors()
                        : OneOfEach.fleet().injectors());
        if (version < StoreOpening.NEWEST) {
            Path kept = onlyKept(version);
            assertThat(StoreFiles.in(kept)).hasSize(3);
            Path back = folder.resolve("back");
            StoreFiles.copy(kept, back);
            assertThat(versionOf(back)).as("the store as it was").isEqualTo(version);
        }
    }

    @Test
    void a_new_store_leaves_nothing_beside_it() throws Exception {
        Store.open(StoreSettings.embedded(folder)).close();
        assertThat(names(folder)).allMatch(name -> name.startsWith("planner.") || name.endsWith(".lock"));
    }

    @Test
    void every_moment_between_the_renames_leads_to_a_whole_store() throws Exception {
        Path before = folder.resolve("before");
        Path after = folder.resolve("after");
        OldStore.unpack(9, before);
        OldStore.unpack(9, after);
        assertOpens(after);
        int moments = 0;
        for (int moved = 0; moved <= 3; moved++) {
            assertOpens(oldFilesMoved(folder.resolve("ready" + moved), before, after, moved));
            assertOpens(newFilesMoved(folder.resolve("placing" + moved), before, after, moved));
            moments += 2;
        }
        assertThat(moments).isEqualTo(8);
    }

    @Test
    void a_copy_that_was_cut_off_is_forgotten() throws Exception {
        OldStore.unpack(9, folder);
        Path partial = Files.createDirectories(folder.resolve(StoreUpgrade.PARTIAL));
        Files.writeString(partial.resolve("planner.script"), "half");
        assertOpens(folder);
        assertThat(partial).doesNotExist();
    }

    @Test
    void a_store_that_an_earlier_program_left_half_made_is_made_anew() throws Exception {
        OldStore.empty(4, folder);
        OldStore.run(folder, List.of("create table person (name varchar(60) primary key)"));
        try (Store store = Store.open(StoreSettings.embedded(folder))) {
            assertThat(Schema.version(store.dataSource())).isEqualTo(StoreOpening.NEWEST);
        }
        assertThat(StoreFiles.in(onlyKept(4))).as("not thrown away either").isNotEmpty();
    }

    @Test
    void a_store_with_rows_that_cannot_be_upgraded_stays_as_it_was() throws Exception {
        OldStore.unpack(4, folder);
        OldStore.run(folder, List.of("create table person (name varchar(60) primary key)"));
        assertThatThrownBy(() -> Store.open(StoreSettings.embedded(folder)))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("cannot be upgraded from schema version 4")
                .hasMessageContaining("It is as it was before. Fix: ");
        assertThat(versionOf(folder)).isEqualTo(4);
        assertThat(readings(folder)).isEqualTo(OneOfEach.fleet().readings().size());
        assertThat(folder.resolve(StoreUpgrade.PARTIAL)).doesNotExist();
    }

    private static void assertOpens(Path place) {
        assertOpens(place, earlierInjectors());
    }

    private static void assertOpens(Path place, List<FittedInjector> injectors) {
        try (Store store = Store.open(StoreSettings.embedded(place))) {
            FleetSnapshot fleet = store.snapshot();
            assertThat(Schema.version(store.dataSource())).isEqualTo(StoreOpening.NEWEST);
            assertThat(fleet.trucks()).hasSameSizeAs(OneOfEach.fleet().trucks());
            assertThat(fleet.injectors()).isEqualTo(injectors);
            assertThat(fleet.readings()).isEqualTo(OneOfEach.fleet().readings());
        }
        assertThat(place.resolve(StoreUpgrade.READY)).doesNotExist();
        assertThat(place.resolve(StoreUpgrade.PLACING)).doesNotExist();
    }

    /** Those that stores of before several fittings a day and unknown days of fitting could hold. */
    static List<FittedInjector> earlierInjectors() {
        List<FittedInjector> all = OneOfEach.fleet().injectors();
        FittedInjector last = all.get(2);
        return List.of(
                all.get(0),
                new FittedInjector(
                        "T-1",
                        1,
                        last.part(),
                        null,
                        null,
                        last.origin(),
                        last.fittedOn(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null));
    }

    /** Cut off while the old files moved into their kept folder. */
    private static Path oldFilesMoved(Path place, Path before, Path after, int moved) throws IOException {
        StoreFiles.copy(before, place);
        StoreFiles.copy(after, place.resolve(StoreUpgrade.READY));
        Files.writeString(place.resolve(StoreUpgrade.READY).resolve("keep-as.txt"), "before-upgrade-from-9-x");
        if (moved > 0) {
            move(place, Files.createDirectories(place.resolve("before-upgrade-from-9-x")), moved);
        }
        return place;
    }

    /** Cut off while the new files moved up. */
    private static Path newFilesMoved(Path place, Path before, Path after, int moved) throws IOException {
        StoreFiles.copy(before, place.resolve("before-upgrade-from-9-x"));
        StoreFiles.copy(after, place.resolve(StoreUpgrade.PLACING));
        move(place.resolve(StoreUpgrade.PLACING), place, moved);
        return place;
    }

    private static void move(Path from, Path to, int files) throws IOException {
        for (Path file : StoreFiles.in(from).subList(0, files)) {
            Files.move(file, to.resolve(file.getFileName()));
        }
    }

    private Path onlyKept(int version) throws IOException {
        List<String> kept = names(folder).stream()
                .filter(name -> name.startsWith(StoreUpgrade.KEPT + version + "-"))
                .toList();
        assertThat(kept).hasSize(1);
        return folder.resolve(kept.get(0));
    }

    private static int versionOf(Path store) {
        try (var pool = OldStore.pool(StoreSettings.embedded(store))) {
            return Schema.version(pool);
        } finally {
            StoreUpgrade.shutDown(StoreSettings.embedded(store));
        }
    }

    private static int readings(Path store) throws SQLException {
        try (var pool = OldStore.pool(StoreSettings.embedded(store));
                Connection connection = pool.getConnection();
                var statement = connection.createStatement();
                var count = statement.executeQuery("select count(*) from reading")) {
            assertThat(count.next()).isTrue();
            return count.getInt(1);
        }
    }

    private static List<String> names(Path place) throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
