package dev.injectorplanner.app.command;

import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.run.CostKind;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A replay on the terminal, or as JSON. */
final class ReplayPrinter {
    private final PrintWriter out;
    private final SiteUnits units;
    private final double perUnit;

    /** @param units of the site; JSON stays in km */
    ReplayPrinter(PrintWriter out, SiteUnits units) {
        this.out = out;
        this.units = units;
        this.perUnit = 1 / units.ofKm(1);
    }

    void list(List<Scenario> scenarios, boolean json) {
        if (json) {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("scenarios", scenarios.stream().map(ReplayPrinter::row).toList());
            Json.print(out, all);
            return;
        }
        TextTable table = new TextTable("Scenario", ">Trucks", "What it is");
        scenarios.forEach(each -> table.row(each.name(), each.trucks(), each.words()));
        table.print(out);
        out.flush();
    }

    private static Map<String, Object> row(Scenario scenario) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("scenario", scenario.name());
        row.put("trucks", scenario.trucks());
        row.put("words", scenario.words());
        return row;
    }

    void print(ReplayResult result) {
        if (result.policies().isEmpty()) {
            out.println("Stopped before a fleet was finished: there is nothing to compare.");
            out.flush();
            return;
        }
        out.printf(
                Locale.ROOT,
                "Replay \"%s\": %s%n%d fleets of %d trucks, %d years of planning after two years of records, seed %d%s%n%n",
                result.scenario(),
                result.words(),
                result.fleets(),
                result.trucks(),
                result.years(),
                result.seed(),
                result.stopped() ? "; stopped before its end" : "");
        String unit = "1,000 " + units.distanceUnit();
        out.println("Cost per " + unit + " in the site's currency; figures below it are a fleet's, over all years");
        costs(result, unit);
        out.println();
        out.println("Cost per " + unit + " by kind");
        kinds(result);
        out.println();
        out.println("The simple rules, found by search in hindsight");
        result.policies().stream()
                .filter(each -> !each.settings().isEmpty())
                .forEach(each -> out.println("  " + each.policy() + ": " + units.sentence(each.settings())));
        out.flush();
    }

    private void costs(ReplayResult result, String unit) {
        TextTable table = new TextTable(
                "Policy",
                ">Per " + unit,
                ">Against best fixed",
                ">95 % interval",
                ">Road failures",
                ">Planned visits",
                ">Tests",
                ">Injectors",
                ">Hours",
                ">" + units.distanceUnit() + " thrown away");
        for (PolicyResult each : result.policies()) {
            table.row(
                    each.policy(),
                    tenths(each.costPer1000Km() * perUnit),
                    signed(each.difference()),
                    "[" + signed(each.low()) + ", " + signed(each.high()) + "]",
                    tenths(each.roadFailures()),
                    tenths(each.plannedVisits()),
                    tenths(each.tests()),
                    tenths(each.replaced()),
                    tenths(each.hours()),
                    String.format(Locale.ROOT, "%,.0f", units.ofKm(each.thrownAwayKm())));
        }
        table.print(out);
    }

    private void kinds(ReplayResult result) {
        List<String> headings = new ArrayList<>(List.of("Policy"));
        for (CostKind kind : CostKind.values()) {
            headings.add(">" + kind.words());
        }
        TextTable table = new TextTable(headings.toArray(String[]::new));
        for (PolicyResult each : result.policies()) {
            List<Object> row = new ArrayList<>(List.of(each.policy()));
            for (CostKind kind : CostKind.values()) {
                row.add(tenths(each.costKinds().getOrDefault(kind, 0.0) * perUnit));
            }
            table.row(row.toArray());
        }
        table.print(out);
    }

    private static String tenths(double value) {
        return String.format(Locale.ROOT, "%,.1f", value);
    }

    private String signed(double perThousandKm) {
        return String.format(Locale.ROOT, "%+.1f", perThousandKm * perUnit);
    }

    void json(ReplayResult result) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("scenario", result.scenario());
        json.put("words", result.words());
        json.put("fleets", result.fleets());
        json.put("trucks", result.trucks());
        json.put("years", result.years());
        json.put("seed", result.seed());
        json.put("stopped", result.stopped());
        json.put(
                "policies",
                result.policies().stream().map(each -> row(result, each)).toList());
        Json.print(out, json);
    }

    private static Map<String, Object> row(ReplayResult result, PolicyResult policy) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("policy", policy.policy());
        row.put("costPer1000Km", policy.costPer1000Km());
        row.put("difference", policy.difference());
        row.put("interval", List.of(policy.low(), policy.high()));
        row.put("shareClosed", result.shareClosed(policy.policy()));
        row.put("roadFailures", policy.roadFailures());
        row.put("plannedVisits", policy.plannedVisits());
        row.put("tests", policy.tests());
        row.put("testsAlone", policy.testsAlone());
        row.put("injectors", policy.replaced());
        row.put("defectsCaught", policy.caught());
        row.put("hours", policy.hours());
        row.put("coolantLitres", policy.coolantLitres());
        row.put("thrownAwayKm", policy.thrownAwayKm());
        row.put("thousandKm", policy.thousandKm());
        Map<String, Double> kinds = new LinkedHashMap<>();
        policy.costKinds().forEach((kind, cost) -> kinds.put(kind.words(), cost));
        row.put("costs", kinds);
        row.put("settings", policy.settings());
        return row;
    }
}
