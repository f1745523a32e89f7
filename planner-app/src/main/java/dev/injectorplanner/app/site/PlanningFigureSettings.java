package dev.injectorplanner.app.site;

import static dev.injectorplanner.app.site.SettingKinds.figure;

import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import java.util.List;

/** The planning figures, for a site that wants to set one: the weekly calibration then leaves it alone. */
final class PlanningFigureSettings {
    private static final String OTHERWISE = "; chosen by the weekly calibration unless you set it here";

    static final List<SettingKind> LIST = List.of(
            of(
                    PlanningFigure.RENEWAL_MARGIN,
                    "Renewal margin",
                    "above 100 % keeps injectors longer, below 100 % replaces them earlier",
                    0.1,
                    10),
            of(
                    PlanningFigure.ACCESS_SHARE,
                    "Access share",
                    "how much of its share of the access labour a planned replacement is charged; the rest is taken to be paid by"
                            + " injectors that fail",
                    0,
                    1),
            of(
                    PlanningFigure.TEST_WORTH,
                    "Test worth",
                    "how much a test’s expected saving counts; at 0 % tests are planned only where a rule asks for one",
                    0,
                    5),
            of(
                    PlanningFigure.SIGN_WEIGHT,
                    "Sign weight",
                    "how strongly faults and test results count; 100 % as the fleet’s records say",
                    0,
                    2));

    private PlanningFigureSettings() {}

    private static SettingKind of(PlanningFigure figure, String title, String meaning, double least, double most) {
        return figure(
                figure.setting(),
                SettingArea.PLANNING_FIGURES,
                title,
                meaning + OTHERWISE,
                Measure.PERCENT,
                least,
                most,
                figure.of(PlanningFigures.STANDARD),
                (policy, kept) -> policy.withFigures(figure.with(policy.figures(), Double.parseDouble(kept))));
    }
}
