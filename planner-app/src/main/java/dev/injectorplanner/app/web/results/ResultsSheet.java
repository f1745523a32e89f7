package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.results.MonthResult;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.results.ForecastLine;
import dev.injectorplanner.reports.results.ResultsLine;
import dev.injectorplanner.reports.results.RuleLine;
import java.util.List;

/** Results as the lines of their workbook. */
final class ResultsSheet {
    private static final double LEAST_DISTANCE = 1000;

    private ResultsSheet() {}

    /** The oldest first. */
    static List<ResultsLine> months(List<MonthResult> months, SiteUnits units) {
        return months.stream().map(each -> month(each, units)).toList();
    }

    private static ResultsLine month(MonthResult each, SiteUnits units) {
        double distance = units.ofKm(each.km());
        return new ResultsLine(
                each.month().atDay(1),
                each.hasPlan() ? Integer.valueOf(each.planned()) : null,
                each.doneAsPlanned(),
                each.done(),
                each.roadFailures(),
                each.hasPlan() ? Double.valueOf(each.plannedHours()) : null,
                each.workedHours(),
                each.unplannedHours(),
                each.early(),
                each.coresCredited(),
                each.coresLost(),
                each.warranty(),
                each.parts(),
                each.labour(),
                each.failures(),
                each.km(),
                distance < LEAST_DISTANCE ? null : Double.valueOf(each.cost() / distance * 1000));
    }

    static List<RuleLine> rules(List<RulePrice> prices, SiteUnits units) {
        return prices.stream()
                .map(each -> new RuleLine(
                        RuleWords.of(each.rule(), units),
                        each.price(),
                        each.visitsWith(),
                        each.visitsWithout(),
                        each.injectorsWith(),
                        each.injectorsWithout()))
                .toList();
    }

    static List<ForecastLine> forecasts(Calibration calibration) {
        return calibration.bands().stream()
                .map(band -> new ForecastLine(
                        band.low(),
                        band.high(),
                        band.count(),
                        band.expected(),
                        band.failures(),
                        band.least(),
                        band.most(),
                        band.forecast() >= band.least() && band.forecast() <= band.most()))
                .toList();
    }
}
