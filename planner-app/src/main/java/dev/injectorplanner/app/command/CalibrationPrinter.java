package dev.injectorplanner.app.command;

import dev.injectorplanner.core.plan.PlanningFigures;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.calibrate.CalibrationResult;
import dev.injectorplanner.core.replay.calibrate.FigureTrial;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.replay.CalibrationWords;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A calibration on the terminal, or as JSON. */
final class CalibrationPrinter {
    private final PrintWriter out;
    private final SiteUnits units;
    private final double perUnit;

    /** @param units of the site; JSON stays in km */
    CalibrationPrinter(PrintWriter out, SiteUnits units) {
        this.out = out;
        this.units = units;
        this.perUnit = 1 / units.ofKm(1);
    }

    void print(CalibrationResult result, boolean kept) {
        CalibrationWords words = new CalibrationWords(result, units);
        out.println(units.sentence(words.about()));
        out.println();
        if (result.stopped()) {
            out.println("Stopped before its end: nothing was chosen.");
            out.flush();
            return;
        }
        figures(result);
        out.println();
        out.println("On fresh fleets, cost per 1,000 " + units.distanceUnit() + " in the site's currency");
        policies(result);
        out.println();
        out.println(words.answer());
        out.println(
                kept
                        ? "Kept: the next plan is made with these figures."
                        : "Nothing was stored. Use --keep to plan with these figures.");
        out.flush();
    }

    private void figures(CalibrationResult result) {
        List<String> headings = new ArrayList<>(List.of("Tried"));
        for (PlanningFigure figure : PlanningFigure.values()) {
            headings.add(">" + figure.words());
        }
        headings.addAll(List.of(">Difference", ">Standard error", "Kept"));
        TextTable table = new TextTable(headings.toArray(String[]::new));
        table.row(row("before", result.before(), "", "", "").toArray());
        int number = 0;
        for (FigureTrial trial : result.trials()) {
            table.row(row(
                            String.valueOf(++number),
                            trial.figures(),
                            signed(trial.difference()),
                            tenths(trial.error()),
                            trial.kept() ? "yes" : "no")
                    .toArray());
        }
        table.row(row("chosen", result.chosen(), "", "", "").toArray());
        table.print(out);
    }

    private static List<Object> row(
            String name, PlanningFigures figures, String difference, String error, String kept) {
        List<Object> row = new ArrayList<>(List.of(name));
        for (PlanningFigure figure : PlanningFigure.values()) {
            row.add(CalibrationWords.percent(figure.of(figures)));
        }
        row.addAll(List.of(difference, error, kept));
        return row;
    }

    private void policies(CalibrationResult result) {
        TextTable table = new TextTable(
                "Policy", ">Cost", ">Against before", ">95 % interval", ">Road failures", ">Tests", ">Injectors");
        for (PolicyResult each : result.policies()) {
            table.row(
                    each.policy(),
                    tenths(each.costPer1000Km()),
                    signed(each.difference()),
                    "[" + signed(each.low()) + ", " + signed(each.high()) + "]",
                    plain(each.roadFailures()),
                    plain(each.tests()),
                    plain(each.replaced()));
        }
        table.print(out);
    }

    private String tenths(double per1000Km) {
        return plain(per1000Km * perUnit);
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%,.1f", value);
    }

    private String signed(double per1000Km) {
        return String.format(Locale.ROOT, "%+.1f", per1000Km * perUnit);
    }

    void json(CalibrationResult result, boolean kept) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("calibration", result);
        json.put("kept", kept);
        Json.print(out, json);
    }
}
