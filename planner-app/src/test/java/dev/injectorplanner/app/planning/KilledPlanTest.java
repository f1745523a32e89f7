package dev.injectorplanner.app.planning;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.kill.Databases;
import dev.injectorplanner.app.kill.KilledProcess;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptVisit;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.visit.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans of one depot, made and kept on either database, killed at random moments. More of it: {@code -Dplanner.kill.times=20}. */
class KilledPlanTest {
    private static final int TIMES = Integer.getInteger("planner.kill.times", 1);
    private static final long SEED = Long.getLong("planner.kill.seed", 7L);
    private static final int LONGEST_MILLIS = 1_500;
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir
    private Path folder;

    /** Makes one plan after the other, each under a run of its own, and says which are kept for good. */
    static final class Plans {
        private Plans() {}

        public static void main(String[] args) {
            try (Application application = Application.open(KilledProcess.store(args))) {
                System.out.println("open");
                for (int run = 0; run < 1_000; run++) {
                    plan(application, args[3], run);
                    System.out.println(run);
                    System.out.flush();
                }
            }
        }
    }

    private static void plan(Application application, String depot, int run) {
        application
                .planning()
                .planAndKeep("run " + run, NOW.plusSeconds(run), DemoFleet.TODAY, Policy.standard(), depot);
    }

    @Test
    void in_the_embedded_store_a_plan_is_kept_whole_or_not_at_all() throws Exception {
        try (Databases databases = Databases.embedded(folder)) {
            killed(databases);
        }
    }

    @Test
    void in_a_shared_database_a_plan_is_kept_whole_or_not_at_all() throws Exception {
        try (Databases databases = Databases.shared()) {
            killed(databases);
        }
    }

    private void killed(Databases databases) throws Exception {
        SplittableRandom random = new SplittableRandom(SEED);
        FleetSnapshot made =
                new FleetGenerator(DemoFleet.ofSize(12, 3)).generate().snapshot();
        List<Path> files = FleetFiles.write(made, Files.createDirectories(folder.resolve("files")));
        String depot = made.depots().get(0).depot();
        for (int time = 0; time < TIMES; time++) {
            StoreSettings data = databases.next();
            try (Application application = Application.open(data)) {
                application.intake().load(files, LoadSettings.of(LoadSettings.Mode.GOOD_ROWS), LoadListener.SILENT);
            }
            int killAfter = 1 + random.nextInt(4);
            List<String> said = KilledProcess.run(
                    Plans.class,
                    data,
                    List.of(depot),
                    lines -> lines.size() == killAfter
                            ? Optional.of(Duration.ofMillis(random.nextInt(LONGEST_MILLIS)))
                            : Optional.empty());
            assertThat(said).startsWith("open");
            wholeOrNot(data, depot, said.size() - 1, "seed " + SEED + ", time " + time);
        }
    }

    private static void wholeOrNot(StoreSettings data, String depot, int acknowledged, String when) {
        try (Application application = Application.open(data)) {
            Optional<KeptPlan> before = application.plans().findInForce(depot);
            if (acknowledged > 0) {
                assertThat(before).as(when).isPresent();
            }
            before.ifPresent(kept -> whole(application, depot, kept, when));
            plan(application, depot, acknowledged); // the run that was killed, begun again under its own key
            KeptPlan after = application.plans().findInForce(depot).orElseThrow();
            assertThat(after.keptAt()).as("the run's plan, once, " + when).isEqualTo(NOW.plusSeconds(acknowledged));
            whole(application, depot, after, when);
        }
    }

    /** The visits kept as rows are those of the kept document. */
    private static void whole(Application application, String depot, KeptPlan kept, String when) {
        assertThat(application.plans().listVisits(depot).stream().map(KeptVisit::truck))
                .as(when)
                .containsExactlyInAnyOrderElementsOf(
                        kept.plan().visits().stream().map(Visit::truck).toList());
    }
}
