package dev.injectorplanner.app.web.replay;

import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.replay.CalibrationWords;
import dev.injectorplanner.reports.replay.ReplayColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The planning figures as they are used, and what the last calibration tried.
 *
 * @param figures one line a figure
 * @param answer what the last calibration found, in sentences; says so where there was none
 * @param about what was played; empty where there was none
 * @param sections what was tried, and how the choice did beside simple rules; empty where there was none
 */
public record PlanningFiguresView(
        List<Figure> figures, String answer, String about, List<TablesView.Section> sections) {
    private static final String NONE_YET =
            "No calibration has run yet, so the planner’s defaults are in use. It runs every week by itself.";

    /**
     * A figure.
     *
     * @param name what it is called
     * @param used the value that plans are made with
     * @param standard the planner's default
     * @param source who chose it
     */
    public record Figure(String name, String used, String standard, String source) {}

    static PlanningFiguresView of(
            Optional<KeptCalibrations.Kept> kept, Policy policy, SiteSettings settings, SiteForm form) {
        Set<PlanningFigure> set = settings.setFigures();
        List<Figure> figures = new ArrayList<>();
        for (PlanningFigure figure : PlanningFigure.values()) {
            String source = set.contains(figure)
                    ? "set by the site"
                    : kept.isPresent() ? "last calibration" : "planner default";
            figures.add(new Figure(
                    capital(figure.words()),
                    CalibrationWords.percent(figure.of(policy.figures())),
                    CalibrationWords.percent(figure.of(PlanningFigures.STANDARD)),
                    source));
        }
        if (kept.isEmpty()) {
            return new PlanningFiguresView(figures, NONE_YET, "", List.of());
        }
        CalibrationResult result = kept.get().result();
        CalibrationWords words = new CalibrationWords(result, form.units());
        return new PlanningFiguresView(
                figures,
                words.answer(),
                form.sentence(words.about()),
                List.of(trials(result, form), policies(result, form)));
    }

    private static TablesView.Section trials(CalibrationResult result, SiteForm form) {
        return TablesView.Rows.of(
                        "Q",
                        "Figures tried",
                        form.units(),
                        new ReplayColumns(form.units()).trials(),
                        result.trials(),
                        row -> "")
                .section(
                        "one figure after another, each step held against the best so far",
                        "",
                        "Nothing was tried: the site has set every figure.");
    }

    private static TablesView.Section policies(CalibrationResult result, SiteForm form) {
        return TablesView.Rows.of(
                        "R",
                        "On fresh fleets",
                        form.units(),
                        new ReplayColumns(form.units()).confirmed(),
                        result.policies(),
                        row -> "")
                .section("simple rules with the figures that the search fleets gave them", "", "Nothing was finished.");
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
