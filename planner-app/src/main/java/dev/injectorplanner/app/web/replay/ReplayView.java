package dev.injectorplanner.app.web.replay;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.replay.ReplayColumns;
import java.util.List;

/**
 * A replay as it is shown.
 *
 * @param about what was played
 * @param answer what it says, in a sentence; empty where nothing was finished
 * @param bars cost of each policy
 * @param unit what costs are per
 * @param sections its tables
 */
public record ReplayView(String about, String answer, List<Bar> bars, String unit, List<TablesView.Section> sections) {
    private static final double WIDEST = 420;

    /** Cost of one policy as a bar. */
    public record Bar(String policy, String cost, double width, boolean planner) {}

    static ReplayView of(ReplayResult result, String planner, SiteForm form) {
        ReplayColumns columns = new ReplayColumns(form.units());
        double most = result.policies().stream()
                .mapToDouble(PolicyResult::costPer1000Km)
                .max()
                .orElse(1);
        double each = 1 / form.units().ofKm(1);
        List<PolicyResult> rules = result.policies().stream()
                .filter(row -> !row.settings().isEmpty())
                .toList();
        return new ReplayView(
                form.sentence(result.words()) + ". " + result.fleets() + " fleets of " + result.trucks() + " trucks, "
                        + result.years() + (result.years() == 1 ? " year" : " years")
                        + " of planning after two years of records"
                        + (result.stopped() ? "; stopped before its end." : "."),
                answer(result, planner, columns.distance(), each),
                result.policies().stream()
                        .map(row -> new Bar(
                                row.policy(),
                                DisplayFormat.tenth(row.costPer1000Km() * each),
                                Math.rint(10 * WIDEST * row.costPer1000Km() / most) / 10,
                                row.policy().equals(planner)))
                        .toList(),
                columns.distance(),
                List.of(
                        TablesView.Rows.of(
                                        "C", "Compared", form.units(), columns.compared(), result.policies(), row -> "")
                                .section("same lives, noise and delays for each policy", "", "Nothing was finished."),
                        TablesView.Rows.of(
                                        "D",
                                        "Cost by kind",
                                        form.units(),
                                        columns.kinds(),
                                        result.policies(),
                                        row -> "")
                                .section("per " + columns.distance(), "", "Nothing was finished."),
                        TablesView.Rows.of("E", "The simple rules", form.units(), columns.settings(), rules, row -> "")
                                .section("found by search in hindsight", "", "Nothing was finished.")));
    }

    private static String answer(ReplayResult result, String planner, String distance, double each) {
        return result.findPolicy(planner)
                .map(row -> {
                    double less = -row.difference() * each;
                    String sure = row.low() > 0 || row.high() < 0
                            ? ""
                            : ", which as many fleets as these could show by chance";
                    return "Per " + distance + ", the planner costs " + DisplayFormat.tenth(Math.abs(less))
                            + (less >= 0 ? " less" : " more") + " than the best fixed interval" + sure + ".";
                })
                .orElse("");
    }
}
