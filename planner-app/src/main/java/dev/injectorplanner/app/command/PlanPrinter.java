package dev.injectorplanner.app.command;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.PlanWords;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.parts.NeedColumns;
import dev.injectorplanner.reports.table.TextTable;
import dev.injectorplanner.reports.work.VisitColumns;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A plan in a screen or two: the coming visits, who waits, what is missing. */
final class PlanPrinter {
    private static final int SHOWN = 12;

    private final PrintWriter out;
    private final int shown;
    private final SiteForm form;

    /** In km, litres and without a currency. */
    PlanPrinter(PrintWriter out) {
        this(out, SiteForm.STANDARD);
    }

    PlanPrinter(PrintWriter out, SiteForm form) {
        this(out, form, false);
    }

    /** @param all whether every visit, truck and part is printed, not the first dozen */
    PlanPrinter(PrintWriter out, SiteForm form, boolean all) {
        this.shown = all ? Integer.MAX_VALUE : SHOWN;
        this.out = out;
        this.form = form;
    }

    void print(Plan engine) {
        Plan plan = PlanWords.in(form.units(), engine);
        out.printf(
                "Plan of %s, weeks %s to %s%n",
                plan.today(), plan.firstWeek(), plan.firstWeek().plus(plan.weeks() - 1));
        plan.safety().forEach(each -> out.println("SAFETY  " + each.words()));
        plan.records().sentences().forEach(line -> out.println("RECORDS  " + line));
        dueItems(plan.dueItems());
        expected(plan.risks());
        hours(plan);
        cost(plan.cost());
        mustNotWait(plan);
        visits(plan.visits());
        unplanned(plan.unplanned());
        missing(plan.partNeeds(), plan.today());
    }

    private void dueItems(List<DueItem> dueItems) {
        Map<DueKind, Long> kinds =
                dueItems.stream().collect(Collectors.groupingBy(DueItem::kind, TreeMap::new, Collectors.counting()));
        String byKind = kinds.entrySet().stream()
                .map(kind -> kind.getValue() + " " + words(kind.getKey()))
                .collect(Collectors.joining(", "));
        out.printf("%nDue: %d items%s%n", dueItems.size(), byKind.isEmpty() ? "" : " (" + byKind + ")");
    }

    private void expected(List<InjectorRisk> risks) {
        if (!risks.isEmpty()) {
            out.printf(
                    Locale.ROOT,
                    "Expected if nothing is done: %.1f failures within 4 weeks, %.1f within 12, of %d injectors%n",
                    risks.stream().mapToDouble(InjectorRisk::chance4).sum(),
                    risks.stream().mapToDouble(InjectorRisk::chance12).sum(),
                    risks.size());
        }
    }

    private void hours(Plan plan) {
        double hours = plan.visits().stream().mapToDouble(Visit::labourHours).sum();
        double litres = plan.visits().stream().mapToDouble(Visit::drainedLitres).sum();
        long cylinders = plan.visits().stream()
                .mapToLong(visit -> visit.cylinders().size())
                .sum();
        out.printf(
                Locale.ROOT,
                "Planned: %d visits, %d injectors, %.1f hours, %s of coolant drained%n",
                plan.visits().size(),
                cylinders,
                hours,
                form.units().volume() == SiteUnits.Volume.LITRES
                        ? String.format(Locale.ROOT, "%.0f litres", litres)
                        : form.units().volume(litres));
    }

    private void cost(PlanCost cost) {
        Double gap = cost.gap();
        String proven =
                gap == null ? "" : String.format(Locale.ROOT, "; within %.2f %% of the best possible", 100 * gap);
        out.printf(
                Locale.ROOT,
                "Expected money compared with doing nothing in these weeks: %s %,.0f%s%n",
                cost.money() <= 0 ? "saves" : "costs",
                Math.abs(cost.money()),
                form.currency().isEmpty() ? "" : " " + form.currency());
        out.printf(
                Locale.ROOT,
                "Weights of limits met, warranty tests and confirmed visits kept: %,.0f (no money)%s%n",
                0.0 - cost.weights(),
                proven);
        cost.brokenWishes().forEach(wish -> out.println("Cannot be kept: " + wish.truck() + ", " + wish.reason()));
    }

    /** Trucks with a leak or a fault of the fuel pressure, and when they come in. */
    private void mustNotWait(Plan plan) {
        List<DueItem> safety = plan.dueItems().stream()
                .filter(item -> item.kind() == DueKind.SAFETY)
                .toList();
        if (safety.isEmpty()) {
            return;
        }
        out.printf("%nSafety: bring in now (if fuel leaks, stop the truck; the engine maker's manual decides)%n");
        for (DueItem item : safety) {
            String when = plan.visits().stream()
                    .filter(visit -> visit.truck().equals(item.truck()))
                    .map(visit -> "comes in " + visit.week())
                    .findFirst()
                    .orElse("has no visit");
            out.println("  " + item.truck() + " (" + item.depot() + "): " + item.evidence() + "; due " + item.by()
                    + ", " + when);
        }
    }

    private void visits(List<Visit> visits) {
        if (visits.isEmpty()) {
            return;
        }
        List<Visit> next = visits.stream()
                .sorted((a, b) -> a.week().compareTo(b.week()))
                .limit(shown)
                .toList();
        out.printf("%nNext visits%n");
        TextTable.of(VisitColumns.IN_SHORT, next).print(out);
        more(visits.size(), "visits");
    }

    private void unplanned(List<Unplanned> unplanned) {
        if (unplanned.isEmpty()) {
            return;
        }
        out.printf("%nDue, but no visit planned%n");
        unplanned.stream()
                .limit(shown)
                .forEach(each -> out.println(
                        "  " + each.truck() + " (" + each.depot() + "), " + what(each) + ": " + each.reason()));
        more(unplanned.size(), "trucks");
    }

    /** What is due there, the most pressing: the task, or the rule that asks. */
    private static String what(Unplanned unplanned) {
        DueItem first = unplanned.dueItems().get(0);
        int more = unplanned.dueItems().size() - 1;
        String task = first.task();
        return (first.cylinder() == null ? "" : "cyl " + first.cylinder() + " ")
                + (task == null ? first.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') : task)
                + (more == 0 ? "" : " (+" + more + ")");
    }

    private void missing(List<PartNeed> needs, LocalDate today) {
        List<PartNeed> missing =
                needs.stream().filter(need -> need.missing() > 0).toList();
        if (missing.isEmpty()) {
            return;
        }
        out.printf("%nMissing parts%n");
        TextTable.of(NeedColumns.missing(today), missing.stream().limit(shown).toList())
                .print(out);
        more(missing.size(), "lines");
    }

    private void more(int all, String what) {
        if (all > shown) {
            out.printf("  ... %d %s in total%n", all, what);
        }
    }

    private static String words(DueKind kind) {
        return kind == DueKind.SAFETY
                ? "safety: bring in now"
                : kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
