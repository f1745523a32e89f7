package dev.injectorplanner.app.plans;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Plans that are kept in the same moment: by a double click under one key, by two people, and by the nightly job. */
class SameMomentTest {
    private static final Instant NIGHT = Instant.parse("2026-03-02T01:00:00Z");
    private static final int PEOPLE = 4;
    private static final int ROUNDS = 10;

    @Test
    @Timeout(300)
    void one_plan_a_key_and_no_alert_twice(@TempDir Path folder) throws Exception {
        try (Application application = Application.open(StoreSettings.embedded(folder.resolve("data")))) {
            application
                    .intake()
                    .load(
                            SampleFiles.copyTo(Files.createDirectories(folder.resolve("files"))),
                            LoadSettings.of(Mode.GOOD_ROWS),
                            LoadListener.SILENT);
            Planned planned = application
                    .planning()
                    .plan(DemoFleet.TODAY, Policy.standard().withWeeks(4), "Norrvik");
            Alerts alerts = new Alerts(application.store().dataSource());
            ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
            for (int round = 0; round < ROUNDS; round++) {
                String key = "by hand " + round;
                Instant at = NIGHT.plusSeconds(round);
                Callable<Long> replan = () -> {
                    long number = application.planning().keep(key, at, planned, "Norrvik", "manager");
                    alerts.update(planned, at, "manager");
                    return number;
                };
                Set<Long> numbers = new HashSet<>();
                for (Future<Long> each : people.invokeAll(Collections.nCopies(PEOPLE, replan))) {
                    numbers.add(each.get());
                }
                assertThat(numbers).as(key).hasSize(1);
            }
            people.shutdown();
            assertThat(alerts.list("Norrvik", List.of(AlertState.values())))
                    .extracting(alert -> alert.truck() + " " + alert.cylinder() + " " + alert.rule())
                    .doesNotHaveDuplicates();
        }
    }
}
