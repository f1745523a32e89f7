package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.plans.KeptVisit;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.week.WeekView.Change;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** What changed since the plan before. */
final class Changes {
    private final KeptPlans kept;

    Changes(KeptPlans kept) {
        this.kept = kept;
    }

    /** Visits moved, added, gone or with other work, by depot and truck. */
    List<Change> of(List<DepotPlan> plans) {
        List<Change> changes = new ArrayList<>();
        for (DepotPlan plan : plans) {
            before(plan).ifPresent(visits -> changes.addAll(between(visits, plan)));
        }
        return changes;
    }

    /** What the plans are checked against, in words. */
    String since(List<DepotPlan> plans) {
        return plans.stream().anyMatch(plan -> before(plan).isPresent())
                ? "compared with the previous plan"
                : "this is the first plan, so there is nothing to compare";
    }

    private Optional<List<KeptVisit>> before(DepotPlan plan) {
        return kept.findVisitsBefore(plan.depot(), plan.kept().keptAt());
    }

    static List<Change> between(List<KeptVisit> before, DepotPlan plan) {
        Map<String, KeptVisit> old = new TreeMap<>();
        before.forEach(visit -> old.put(visit.truck(), visit));
        Map<String, Visit> now = new TreeMap<>();
        plan.visits().forEach(visit -> now.put(visit.truck(), visit));
        TreeSet<String> trucks = new TreeSet<>(old.keySet());
        trucks.addAll(now.keySet());
        List<Change> changes = new ArrayList<>();
        for (String truck : trucks) {
            KeptVisit was = old.get(truck);
            Visit is = now.get(truck);
            if (was == null && is != null) {
                changes.add(change(plan, truck, "add", "new, " + is.week(), is.why(), is.labourHours()));
            } else if (is == null
                    && was != null
                    && was.week().compareTo(plan.plan().firstWeek()) >= 0) {
                changes.add(change(
                        plan, truck, "gone", "removed, was " + was.week(), without(plan, truck), -was.labourHours()));
            } else if (was != null && is != null) {
                changed(plan, was, is).ifPresent(changes::add);
            }
        }
        return changes;
    }

    private static Optional<Change> changed(DepotPlan plan, KeptVisit was, Visit is) {
        double hours = is.labourHours() - was.labourHours();
        if (!was.week().equals(is.week())) {
            String what = "from " + DisplayFormat.week(was.week()) + " to " + DisplayFormat.week(is.week());
            return Optional.of(change(plan, is.truck(), "move", what, is.why(), hours));
        }
        boolean same = was.cylinders().equals(is.cylinders())
                && was.tasks().equals(is.tasks())
                && was.inspection() == is.inspection();
        return same
                ? Optional.empty()
                : Optional.of(change(plan, is.truck(), "plan", "now " + plan.work(is), is.why(), hours));
    }

    private static Change change(DepotPlan plan, String truck, String mark, String what, String why, double hours) {
        return new Change(truck, plan.depot(), mark, what, why, DisplayFormat.moreTenth(hours));
    }

    private static String without(DepotPlan plan, String truck) {
        return plan.unplanned().stream()
                .filter(each -> each.truck().equals(truck))
                .map(each -> each.reason())
                .findFirst()
                .orElse("nothing is due on it any more");
    }
}
