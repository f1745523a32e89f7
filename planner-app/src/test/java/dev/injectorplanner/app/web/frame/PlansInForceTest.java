package dev.injectorplanner.app.web.frame;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies of plans for pages go when no page can show them any more, not only when memory runs short. */
class PlansInForceTest {
    private static final Instant NIGHT = Instant.parse("2026-03-02T01:00:00Z");

    @Test
    void a_plan_that_was_replaced_is_not_held(@TempDir Path folder) throws Exception {
        try (Application application = Application.open(StoreSettings.embedded(folder.resolve("data")))) {
            application
                    .intake()
                    .load(
                            SampleFiles.copyTo(Files.createDirectories(folder.resolve("files"))),
                            LoadSettings.of(Mode.GOOD_ROWS),
                            LoadListener.SILENT);
            Plan plan = application
                    .planning()
                    .plan(DemoFleet.TODAY, Policy.standard().withWeeks(4), null)
                    .plan();
            PlansInForce pages = new PlansInForce(application.plans());
            application.plans().keep("all depots", null, NIGHT, plan);
            assertThat(pages.find("Norrvik")).isPresent();
            assertThat(pages.find("Eastgate")).isPresent();
            for (int i = 0; i < 5; i++) {
                application.plans().keep("run " + i, "Norrvik", NIGHT.plusSeconds(i), plan);
                long shown = pages.find("Norrvik").orElseThrow().id();

                assertThat(shown)
                        .isEqualTo(application.plans().findInForceId("Norrvik").orElseThrow());
                assertThat(pages.copies())
                        .as("one of all depots, one of Norrvik")
                        .isEqualTo(2);
            }
        }
    }
}
