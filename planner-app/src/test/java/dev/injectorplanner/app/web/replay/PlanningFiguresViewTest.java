package dev.injectorplanner.app.web.replay;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.FigureTrial;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The planning figures as the replay page shows them, from a calibration that was kept and read again. */
class PlanningFiguresViewTest {
    private static final PlanningFigures LONGER = PlanningFigures.STANDARD.withRenewalMargin(1.4);

    private static PolicyResult policy(String name, double cost, double difference) {
        return new PolicyResult(
                name,
                "its figures",
                cost,
                Map.of(),
                difference,
                difference - 1,
                difference + 1,
                1,
                2,
                3,
                4,
                5,
                6,
                7,
                8,
                9,
                10);
    }

    @Test
    void a_kept_calibration_says_what_it_tried_what_it_gains_and_who_chose(@TempDir Path folder) {
        CalibrationResult result = new CalibrationResult(
                "the loaded fleet",
                40,
                4,
                52,
                7,
                false,
                PlanningFigures.STANDARD,
                LONGER,
                LONGER,
                List.of(new FigureTrial(LONGER, 31.9, -1.3, 0.7, true)),
                List.of(
                        policy(ReplayResult.SIGNS, 31, -1.3),
                        policy(CalibrationResult.BEFORE, 32.3, 0),
                        policy(CalibrationResult.FOUND, 31.6, -0.7)));
        try (Store store = Store.open(StoreSettings.embedded(folder))) {
            SiteSettings settings = new SiteSettings(store.dataSource());
            KeptCalibrations kept = new KeptCalibrations(store.dataSource());
            assertThat(PlanningFiguresView.of(Optional.empty(), settings.policy(), settings, settings.form())
                            .sections())
                    .isEmpty();
            kept.keep("one", Instant.parse("2026-03-01T00:30:00Z"), result, Set.of(), "jobs");
            settings.set(SettingKinds.get("sign-weight"), "80", "manager");
            PlanningFiguresView view =
                    PlanningFiguresView.of(kept.find(), settings.policy(), settings, settings.form());
            assertThat(view.figures())
                    .contains(
                            new PlanningFiguresView.Figure("Renewal margin", "140 %", "100 %", "last calibration"),
                            new PlanningFiguresView.Figure("Sign weight", "80 %", "100 %", "set by the site"));
            assertThat(view.answer())
                    .contains(
                            "The figures found save 0.7 per 1,000 km",
                            "best ages and signs, is still 0.6 cheaper here");
            assertThat(view.sections())
                    .hasSize(2)
                    .allSatisfy(section -> assertThat(section.rows()).isNotEmpty());
        }
    }
}
