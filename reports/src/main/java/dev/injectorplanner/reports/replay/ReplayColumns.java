package dev.injectorplanner.reports.replay;

import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.calibrate.FigureTrial;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.table.Unit;
import dev.injectorplanner.reports.workbook.Format;
import java.util.ArrayList;
import java.util.List;

/** Columns of policies compared, in the site's distance. */
public final class ReplayColumns {
    private final SiteUnits units;
    private final double perUnit;

    public ReplayColumns(SiteUnits units) {
        this.units = units;
        this.perUnit = 1 / units.ofKm(1); // a cost per km is that much per mile
    }

    /** {@code 1,000 km}. */
    public String distance() {
        return "1,000 " + units.distanceUnit();
    }

    /** Cost, difference to the best fixed interval, and what was done, a fleet. */
    public List<TableColumn<PolicyResult>> compared() {
        return against("Against the best fixed interval");
    }

    /** The same against the planner with the figures it had before. */
    public List<TableColumn<PolicyResult>> confirmed() {
        return against("Against the figures before");
    }

    /** Planning figures that were tried. */
    public List<TableColumn<FigureTrial>> trials() {
        List<TableColumn<FigureTrial>> columns = new ArrayList<>();
        for (PlanningFigure figure : PlanningFigure.values()) {
            columns.add(TableColumn.text(
                    capital(figure.words()), 14, trial -> CalibrationWords.percent(figure.of(trial.figures()))));
        }
        columns.add(tried("Cost per " + distance(), each -> each.costPer1000Km()));
        columns.add(tried("Against the best so far", each -> each.difference()));
        columns.add(tried("Standard error", each -> each.error()));
        columns.add(TableColumn.text("Kept", 6, trial -> trial.kept() ? "yes" : "no"));
        return columns;
    }

    private interface TrialFigure {
        double of(FigureTrial trial);
    }

    private TableColumn<FigureTrial> tried(String heading, TrialFigure figure) {
        return TableColumn.<FigureTrial>money(heading, 13, each -> figure.of(each) * perUnit)
                .written(Format.ONE_DECIMAL);
    }

    private List<TableColumn<PolicyResult>> against(String base) {
        return List.of(
                TableColumn.text("Policy", 24, PolicyResult::policy),
                amount("Cost per " + distance(), each -> each.costPer1000Km()),
                amount(base, each -> each.difference()),
                amount("95 % from", each -> each.low()),
                amount("to", each -> each.high()),
                count("Road failures", each -> each.roadFailures()),
                count("Planned visits", each -> each.plannedVisits()),
                count("Injector tests", each -> each.tests()),
                count("Injectors replaced", each -> each.replaced()),
                TableColumn.figure("Labour", Unit.HOURS, 10, PolicyResult::hours));
    }

    /** Cost by kind. */
    public List<TableColumn<PolicyResult>> kinds() {
        List<TableColumn<PolicyResult>> columns = new ArrayList<>();
        columns.add(TableColumn.text("Policy", 24, PolicyResult::policy));
        for (CostKind kind : CostKind.values()) {
            columns.add(amount(capital(kind.words()), each -> each.costKinds().getOrDefault(kind, 0.0)));
        }
        return columns;
    }

    /** The figures that the search found. */
    public List<TableColumn<PolicyResult>> settings() {
        return List.of(
                TableColumn.text("Rule", 24, PolicyResult::policy),
                TableColumn.wrapped("Its figures, found by search in hindsight", 90, PolicyResult::settings));
    }

    private interface Figure {
        double of(PolicyResult result);
    }

    private TableColumn<PolicyResult> amount(String heading, Figure figure) {
        return TableColumn.<PolicyResult>money(heading, 13, each -> figure.of(each) * perUnit)
                .written(Format.ONE_DECIMAL);
    }

    private static TableColumn<PolicyResult> count(String heading, Figure figure) {
        return TableColumn.figure(heading, Unit.NONE, 11, figure::of);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
