package dev.injectorplanner.app.web.replay;

import dev.injectorplanner.app.site.EngineTunings;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.core.plan.EngineFigures;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.tune.EngineFigure;
import dev.injectorplanner.core.replay.tune.TuningResult;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.replay.ReplayColumns;
import dev.injectorplanner.reports.replay.TuningWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The engine's figures as they are planned with, and what the last tuning tried.
 *
 * @param figures one line a figure
 * @param answer what the last tuning found, in sentences; says so where there was none
 * @param about what was played; empty where there was none
 * @param sections what was tried, and how the choice did beside simple rules; empty where there was none
 */
public record EngineFiguresView(List<Figure> figures, String answer, String about, List<TablesView.Section> sections) {
    private static final String NO_TUNING =
            "No tuning has run yet, so the planner's defaults hold. The job “tuning of the engine's figures” runs every week; the jobs page starts it at once.";

    /**
     * A figure.
     *
     * @param name what it is called
     * @param used the value that plans are made with
     * @param standard the planner's default
     * @param source who chose it
     */
    public record Figure(String name, String used, String standard, String source) {}

    static EngineFiguresView of(
            Optional<EngineTunings.Kept> kept, Policy policy, SiteSettings settings, SiteForm form) {
        Set<EngineFigure> held = settings.heldFigures();
        List<Figure> figures = new ArrayList<>();
        for (EngineFigure figure : EngineFigure.values()) {
            String source =
                    held.contains(figure) ? "held by the site" : kept.isPresent() ? "last tuning" : "planner default";
            figures.add(new Figure(
                    capital(figure.words()),
                    TuningWords.percent(figure.of(policy.figures())),
                    TuningWords.percent(figure.of(EngineFigures.STANDARD)),
                    source));
        }
        if (kept.isEmpty()) {
            return new EngineFiguresView(figures, NO_TUNING, "", List.of());
        }
        TuningResult result = kept.get().result();
        TuningWords words = new TuningWords(result, form.units());
        return new EngineFiguresView(
                figures,
                words.answer(),
                form.sentence(words.about()),
                List.of(trials(result, form), policies(result, form)));
    }

    private static TablesView.Section trials(TuningResult result, SiteForm form) {
        return TablesView.Rows.of(
                        "G",
                        "Figures tried",
                        form.units(),
                        new ReplayColumns(form.units()).trials(),
                        result.trials(),
                        row -> "")
                .section(
                        "one figure after another, each step held against the best so far",
                        "",
                        "Nothing was tried: the site holds every figure.");
    }

    private static TablesView.Section policies(TuningResult result, SiteForm form) {
        return TablesView.Rows.of(
                        "H",
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
