package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.PlanQuality;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.paper.PaperDocument;
import dev.injectorplanner.reports.paper.PaperDocument.Column;
import dev.injectorplanner.reports.paper.PaperDocument.Field;
import dev.injectorplanner.reports.paper.PaperDocument.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The week on one page: safety, the week by depot, money, parts, what to decide. */
final class SummaryPaper {
    private static final int MOST_DEPOTS = 10;
    private static final int MOST_LINES = 5;

    private final ChosenDepots chosen;
    private final WeekView view;
    private final SiteForm form;
    private final int keptSets;

    /** @param keptSets sets of cylinders tried a truck and week */
    SummaryPaper(ChosenDepots chosen, WeekView view, SiteForm form, int keptSets) {
        this.chosen = chosen;
        this.view = view;
        this.form = form;
        this.keptSets = keptSets;
    }

    /** @param site what the site calls itself, or empty */
    PaperDocument document(String site) {
        List<Field> fields = List.of(
                new Field("Safety", String.valueOf(view.boxes().size())),
                new Field("To decide", String.valueOf(view.questions().size())),
                new Field("Visits", String.valueOf(view.visits())),
                new Field("Hours booked", view.booked() + " of " + view.available()),
                new Field("Waiting for parts", String.valueOf(view.waiting())));
        return new PaperDocument(
                "Week " + view.week(),
                chosen.only() == null ? "all depots" : String.valueOf(chosen.only()),
                List.of(view.days(), chosen.made()),
                site.isEmpty() ? List.of() : List.of(site),
                fields,
                List.of(safety(), week(), money(), parts(), decide()),
                "Summary of " + view.week());
    }

    private Section safety() {
        List<String> lines = view.boxes().stream()
                .limit(MOST_LINES)
                .map(box -> box.title() + ". " + box.evidence() + " " + DisplayFormat.sentence(box.when()) + ".")
                .toList();
        return Section.said(
                "Safety",
                lines.isEmpty()
                        ? List.of("No open safety fault.")
                        : rest(lines, view.boxes().size()));
    }

    private static List<String> rest(List<String> lines, int all) {
        List<String> said = new ArrayList<>(lines);
        if (all > lines.size()) {
            said.add("And " + (all - lines.size()) + " more on the page.");
        }
        return said;
    }

    private Section week() {
        IsoWeek week = IsoWeek.parse(view.week());
        List<List<String>> rows = new ArrayList<>();
        for (DepotPlan plan : chosen.plans().stream().limit(MOST_DEPOTS).toList()) {
            List<Visit> visits = plan.visitsOf(week);
            WeekLoad load = plan.findLoad(week).orElse(new WeekLoad(plan.depot(), week, 0, 0, 0, 0, 0, 0));
            rows.add(List.of(
                    plan.depot(),
                    String.valueOf(visits.size()),
                    String.valueOf(visits.stream()
                            .mapToInt(visit -> visit.cylinders().size())
                            .sum()),
                    DisplayFormat.tenth(load.labourHours()),
                    DisplayFormat.tenth(load.availableHours()),
                    DisplayFormat.tenth(load.overtimeHours())));
        }
        int more = chosen.plans().size() - rows.size();
        return new Section(
                "The week",
                List.of(),
                List.of(
                        Column.text("Depot"),
                        Column.figure("Visits"),
                        Column.figure("Cylinders"),
                        Column.figure("Hours booked"),
                        Column.figure("Available"),
                        Column.figure("Overtime")),
                rows,
                List.of(),
                more > 0 ? List.of("And " + more + " more depots on the page.") : List.of());
    }

    private Section money() {
        return Section.said(
                form.money("Money and limits"),
                new PlanQuality(keptSets).sentences(chosen.plans(), chosen.anyPlanOfOthers()));
    }

    private Section parts() {
        double value = 0;
        int lines = 0;
        for (DepotPlan plan : chosen.plans()) {
            for (OrderLine line : plan.plan().parts().orders()) {
                if (line.now() && line.depot().equals(plan.depot())) {
                    value += line.value().doubleValue();
                    lines++;
                }
            }
        }
        List<String> said = new ArrayList<>();
        said.add(
                lines == 0
                        ? "Nothing to order today."
                        : lines + " lines to order today, value " + DisplayFormat.money(value) + ".");
        view.parts().stream()
                .limit(MOST_LINES)
                .map(each ->
                        each.truck() + ", " + each.depot() + ": misses " + each.part() + "; " + each.arrives() + ".")
                .forEach(said::add);
        return Section.said(form.money("Parts"), rest(said, view.parts().size() + 1));
    }

    private Section decide() {
        List<String> lines = view.questions().stream()
                .limit(MOST_LINES)
                .map(question -> question.title() + ". Proposed: "
                        + question.options().stream()
                                .findFirst()
                                .map(option -> option.label() + (option.money().isEmpty() ? "" : ", " + option.money()))
                                .orElse("see the page")
                        + ".")
                .toList();
        return Section.said(
                form.money("To decide"),
                lines.isEmpty()
                        ? List.of("Nothing to decide.")
                        : rest(lines, view.questions().size()));
    }

    /** Names of depots on it, by which copies are told apart. */
    static Map<String, Long> plans(ChosenDepots chosen) {
        Map<String, Long> plans = new java.util.TreeMap<>();
        chosen.plans().forEach(plan -> plans.put(plan.depot(), plan.kept().id()));
        return plans;
    }
}
