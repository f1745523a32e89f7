package dev.injectorplanner.app.jobs.task;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.FleetCalibration;
import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.generate.FleetSpec;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The planning figures, chosen for a loaded fleet, planned with, and set by the site. */
class WeeklyCalibrationTest {
    @TempDir
    private Path folder;

    private Application application;
    private DataSource pool;
    private SiteSettings settings;

    @BeforeEach
    void fill() throws Exception {
        application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        pool = application.store().dataSource();
        settings = new SiteSettings(pool);
    }

    @AfterEach
    void close() {
        application.close();
    }

    private Instant load() throws Exception {
        FleetSpec spec = new FleetSpec(DemoFleet.ofSize(6, 11).catalogue(), 11, 6, DemoFleet.TODAY, 1_095, 14, 0);
        List<Path> files = FleetFiles.write(
                new FleetGenerator(spec).generate().snapshot(), Files.createDirectories(folder.resolve("files")));
        assertThat(new Intake(application.store()).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT))
                .noneMatch(report -> report.anyRefused());
        return DemoFleet.TODAY.atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    private WeeklyCalibration calibration() {
        return new WeeklyCalibration(
                application.store(),
                application.planning(),
                settings,
                Clock.systemUTC(),
                seed -> new FleetCalibration.Extent(2, 26, seed, 2));
    }

    @Test
    void the_choice_is_kept_and_planned_with_and_gives_way_to_what_the_site_sets() throws Exception {
        Instant due = load();
        settings.set(SettingKinds.get("sign-weight"), "90", "manager");
        RunKey key = new RunKey(JobKind.CALIBRATION, "", due);
        List<String> told = Collections.synchronizedList(new ArrayList<>());
        TaskResult result = calibration().run(new JobContext(key, 1, due, ZoneOffset.UTC, told::add));
        assertThat(result.words()).matches("figures tried \\d+, steps kept \\d+, changed [01]");
        assertThat(told).anyMatch(words -> words.startsWith("figures, try 2, week "));
        new StoreSql(pool).retried(connection -> {
            result.effect().write(connection);
            return true;
        });
        CalibrationResult kept = new KeptCalibrations(pool).find().orElseThrow().result();
        assertThat(kept.trials())
                .isNotEmpty()
                .allSatisfy(trial -> assertThat(trial.figures().signWeight()).isEqualTo(0.9));
        assertThat(settings.policy().figures()).isEqualTo(kept.chosen());
        assertThat(settings.setFigures()).containsExactly(PlanningFigure.SIGN_WEIGHT);
        settings.set(SettingKinds.get("renewal-margin"), "250", "manager");
        assertThat(settings.policy().figures()).isEqualTo(kept.chosen().withRenewalMargin(2.5));
        settings.clear(SettingKinds.get("renewal-margin"), "manager");
        assertThat(settings.policy().figures()).isEqualTo(kept.chosen());
        settings.clear(SettingKinds.get("sign-weight"), "manager");
        assertThat(settings.policy().figures())
                .as("what the site had set goes when it is cleared")
                .isEqualTo(kept.chosen().withSignWeight(1));
        assertThat(settings.setFigures()).isEmpty();
    }

    @Test
    void a_change_is_noted_like_any_change_to_what_plans_are_made_of() throws Exception {
        load();
        PlanningFigures better = PlanningFigures.STANDARD.withRenewalMargin(1.4);
        CalibrationResult result = new CalibrationResult(
                "own fleet", 6, 2, 26, 1, false, PlanningFigures.STANDARD, better, better, List.of(), List.of());
        new KeptCalibrations(pool).keep("by hand", Instant.now(), result, Set.of(), "manager");
        assertThat(settings.policy().figures()).isEqualTo(better);
        assertThat(settings.unset(SettingKinds.get("renewal-margin"), settings.units()))
                .isEqualTo("140 % (last calibration)");
        assertThat(application.audit().list(Long.MAX_VALUE, 5))
                .anySatisfy(entry -> assertThat(entry.before() + " > " + entry.after())
                        .contains("renewal margin 1.00", "renewal margin 1.40"));
    }

    @Test
    void a_fleet_without_injectors_is_left_alone() {
        RunKey key = new RunKey(JobKind.CALIBRATION, "", Instant.EPOCH);
        assertThat(calibration().isWorthwhile(key)).isFalse();
        assertThat(settings.policy().figures()).isEqualTo(PlanningFigures.STANDARD);
    }
}
