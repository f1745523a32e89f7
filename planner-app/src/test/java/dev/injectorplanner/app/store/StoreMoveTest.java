package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's store goes to PostgreSQL and back, with its plan, alerts, people and what was sent. */
class StoreMoveTest {
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir
    private Path folder;

    private StoreSettings planned() throws Exception {
        StoreSettings settings = StoreSettings.embedded(folder.resolve("data"));
        try (Application application = Application.open(settings)) {
            List<Path> files = SampleFiles.copyTo(Files.createDirectories(folder.resolve("files")));
            application.intake().load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
            var plan = application.planning().planAndKeep("p", NOW, DemoFleet.TODAY, Policy.standard(), null);
            new Alerts(application.store().dataSource()).update(plan, NOW);
            assertThat(new People(application.store().dataSource(), new Pbkdf2Hashing()).findFirstPassword())
                    .isPresent();
        }
        return settings;
    }

    @Test
    void everyTableArrivesAndComesBack() throws Exception {
        StoreSettings embedded = planned();
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            StoreSettings shared =
                    new StoreSettings(postgres.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
            FleetSnapshot fleet;
            Map<String, Long> there;
            try (Store from = Store.open(embedded);
                    Store to = Store.open(shared)) {
                fleet = from.snapshot();
                there = StoreMove.copy(from, to);
                assertThat(to.snapshot()).isEqualTo(fleet);
                assertThatThrownBy(() -> StoreMove.copy(from, to))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("already holds a store");
            }
            assertThat(there.values().stream().mapToLong(Long::longValue).sum()).isGreaterThan(16_000);
            assertThat(there).containsKeys("plan_run", "alert", "person", "unit_return", "order_series");
            goesOnWriting(shared, fleet);
            StoreSettings back = StoreSettings.embedded(folder.resolve("back"));
            try (Store from = Store.open(shared);
                    Store to = Store.open(back)) {
                Map<String, Long> again = StoreMove.copy(from, to);
                assertThat(again.get("reading")).isEqualTo(there.get("reading") + 1);
                assertThat(again.get("alert")).isEqualTo(there.get("alert"));
                assertThat(to.snapshot()).isEqualTo(from.snapshot());
            }
            goesOnWriting(back, fleet);
        }
    }

    /** Numbers that the old database would give out next are not given out twice. */
    private static void goesOnWriting(StoreSettings settings, FleetSnapshot fleet) {
        Reading last = fleet.readings().get(fleet.readings().size() - 1);
        try (Store store = Store.open(settings)) {
            long more = store.snapshot().readings().size() - fleet.readings().size() + 1;
            Reading next = new Reading(
                    last.truck(), last.takenAt().plusSeconds(60 * more), last.odometerKm(), last.engineHours(), false);
            store.inJointTransaction((connection, writer) -> writer.merge(Reading.class, List.of(next), true));
        }
    }
}
