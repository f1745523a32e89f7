package dev.injectorplanner.reports.replay;

import dev.injectorplanner.core.plan.Assumption;
import dev.injectorplanner.core.replay.PolicyResult;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.workbook.BarChart;
import dev.injectorplanner.reports.workbook.Book;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Workbook {@code replay}: policies compared on the same draws, cost by kind, the rules that the search found. */
public final class ReplayWorkbook {
    private final ReplayResult result;
    private final String remark;

    public ReplayWorkbook(ReplayResult result) {
        this.result = result;
        this.remark = result.words() + ". " + result.fleets() + " fleets of " + result.trucks() + " trucks, "
                + result.years() + " years of planning after two years of records, seed " + result.seed()
                + (result.stopped() ? "; stopped before its end" : "") + ".";
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        ReplayColumns columns = new ReplayColumns(form.units());
        List<PolicyResult> rows = result.policies();
        try (Book book = new Book("Replay", form)) {
            SheetTable.add(book, "Policies", "Policies compared on the same draws", remark, columns.compared(), rows)
                    .chart(new BarChart("Cost per " + columns.distance(), "cost", 0, List.of(1)));
            SheetTable.add(
                    book, "Cost by kind", "Cost per " + columns.distance() + " by kind", remark, columns.kinds(), rows);
            SheetTable.add(
                    book,
                    "Rules",
                    "The simple rules, found by search",
                    remark,
                    columns.settings(),
                    rows.stream().filter(each -> !each.settings().isEmpty()).toList());
            book.assumptions(assumptions(), remark);
            book.write(out);
        }
    }

    private static List<Assumption> assumptions() {
        return List.of(
                new Assumption(
                        "same draws",
                        "each fleet has the same lives, noise and delays under every policy; figures are a fleet's mean",
                        "replay"),
                new Assumption(
                        "simple rules",
                        "their figures are found by search on the very fleets that they are judged on, so they know"
                                + " more than anybody could",
                        "replay"),
                new Assumption("clairvoyant", "knows every failure beforehand: nobody can do better", "replay"),
                new Assumption(
                        "interval",
                        "95 % of the mean difference over fleets, paired; with few fleets it is wide",
                        "Student's t"));
    }
}
