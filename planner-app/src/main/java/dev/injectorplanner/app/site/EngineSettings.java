package dev.injectorplanner.app.site;

import static dev.injectorplanner.app.site.SettingKinds.figure;

import dev.injectorplanner.core.plan.EngineFigures;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.tune.EngineFigure;
import java.util.List;

/** The engine's figures, for a site that wants to hold one: the weekly tuning then leaves it alone. */
final class EngineSettings {
    private static final String OTHERWISE = "; set it only to hold it: otherwise the weekly tuning chooses it";

    static final List<SettingKind> LIST = List.of(
            of(
                    EngineFigure.RENEWAL_MARGIN,
                    "Renewal margin",
                    "above 100 % keeps injectors longer, below renews them earlier",
                    0.1,
                    10,
                    EngineFigures::withRenewalMargin),
            of(
                    EngineFigure.ACCESS_SHARE,
                    "Access share",
                    "part of its share of a visit that a cylinder bears, since some visits are paid by another that failed",
                    0,
                    1,
                    EngineFigures::withAccessShare),
            of(
                    EngineFigure.TEST_WORTH,
                    "Test worth",
                    "what a test counts for against what its result would change; 0 % plans no tests",
                    0,
                    5,
                    EngineFigures::withTestWorth),
            of(
                    EngineFigure.SIGN_WEIGHT,
                    "Sign weight",
                    "how far faults and tests are believed; 100 % as the fleet’s records say, 0 % not at all",
                    0,
                    2,
                    EngineFigures::withSignWeight));

    private EngineSettings() {}

    private interface Change {
        EngineFigures of(EngineFigures figures, double value);
    }

    private static SettingKind of(
            EngineFigure figure, String title, String meaning, double least, double most, Change change) {
        return figure(
                figure.setting(),
                SettingArea.ENGINE,
                title,
                meaning + OTHERWISE,
                Measure.PERCENT,
                least,
                most,
                figure.of(EngineFigures.STANDARD),
                (policy, kept) -> changed(policy, change, kept));
    }

    private static Policy changed(Policy policy, Change change, String kept) {
        return policy.withFigures(change.of(policy.figures(), Double.parseDouble(kept)));
    }
}
