package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.PlanQuality;
import dev.injectorplanner.app.web.office.VisitStates;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.PlanCost;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.schedule.WeekLoad;
import dev.injectorplanner.core.schedule.days.DayPlan.Laid;
import dev.injectorplanner.core.visit.Visit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Fills the plan page from the plans in force. */
final class PlanFiller {
    private final Map<String, Holds> holds;
    private final VisitRules rules;
    private final @Nullable Outlook outlook;

    /**
     * @param holds what is held, by depot
     * @param rules how many weeks are frozen, and how many sets of cylinders are tried
     * @param outlook of these depots, or null where none is known
     */
    PlanFiller(Map<String, Holds> holds, VisitRules rules, @Nullable Outlook outlook) {
        this.holds = holds;
        this.rules = rules;
        this.outlook = outlook;
    }

    /**
     * The plan of the depots chosen.
     *
     * @param asked the week whose visits are shown, or null for the first
     * @param truck the truck whose visit is being changed, or empty
     * @throws InvalidValueException where the week lies outside the plan
     */
    PlanView of(ChosenDepots chosen, @Nullable IsoWeek asked, String truck) {
        List<DepotPlan> plans = chosen.plans();
        IsoWeek first = plans.stream()
                .map(plan -> plan.plan().firstWeek())
                .min(IsoWeek::compareTo)
                .orElseThrow();
        int weeks = plans.get(0).plan().weeks();
        IsoWeek week = asked == null ? first : asked;
        if (first.weeksUntil(week) < 0 || first.weeksUntil(week) >= weeks) {
            throw new InvalidValueException(
                    "week",
                    week,
                    "is outside the plan, " + first + " to " + first.plus(weeks - 1),
                    "choose a week in the plan");
        }
        GridFiller grid = new GridFiller(plans, first, weeks, week, rules.frozenWeeks(), new LaterWork(outlook));
        List<Visit> visits = plans.stream()
                .map(DepotPlan::visits)
                .flatMap(Collection::stream)
                .toList();
        return new PlanView(
                weeks + " weeks, " + first + " to " + first.plus(weeks - 1),
                visits.size(),
                DisplayFormat.tenth(
                        visits.stream().mapToDouble(Visit::labourHours).sum()),
                DisplayFormat.tenth(sum(plans, WeekLoad::availableHours)),
                DisplayFormat.tenth(sum(plans, WeekLoad::overtimeHours)),
                visits.stream().mapToInt(visit -> visit.cylinders().size()).sum(),
                chosen.anyPlanOfOthers() ? null : money(plans),
                new PlanQuality(rules.keptSets()).sentences(plans, chosen.anyPlanOfOthers()),
                outlook != null,
                grid.months(),
                grid.weeks(),
                grid.rows(),
                shown(plans, week, first, weeks, truck));
    }

    private static double sum(List<DepotPlan> plans, ToDoubleFunction<WeekLoad> hours) {
        return plans.stream()
                .flatMap(plan -> plan.loads().stream())
                .mapToDouble(hours)
                .sum();
    }

    private static String money(List<DepotPlan> plans) {
        return DisplayFormat.costs(
                PlanQuality.costs(plans).stream().mapToDouble(PlanCost::money).sum());
    }

    private PlanView.Shown shown(List<DepotPlan> plans, IsoWeek week, IsoWeek first, int weeks, String truck) {
        int ahead = first.weeksUntil(week);
        return new PlanView.Shown(
                week.toString(),
                DisplayFormat.days(week.monday(), week.sunday()),
                plans.stream().mapToInt(plan -> plan.visitsOf(week).size()).sum(),
                ahead == 0 ? null : week.plus(-1).toString(),
                ahead == weeks - 1 ? null : week.plus(1).toString(),
                plans.stream().map(plan -> depot(plan, week, truck)).toList());
    }

    private PlanView.Depot depot(DepotPlan plan, IsoWeek week, String truck) {
        Holds held = holds.getOrDefault(plan.depot(), Holds.none());
        List<Visit> visits = plan.visitsOf(week);
        String hours = plan.findLoad(week)
                .map(load -> DisplayFormat.tenth(load.labourHours()) + " of "
                        + DisplayFormat.tenth(load.availableHours()) + " h, "
                        + (load.overtimeHours() > 0
                                ? DisplayFormat.tenth(load.overtimeHours()) + " overtime"
                                : DisplayFormat.tenth(load.availableHours() - load.labourHours()) + " h free"))
                .orElse("closed");
        return new PlanView.Depot(
                plan.depot(),
                hours,
                visits.stream()
                        .filter(plan.plan()::isMain)
                        .anyMatch(visit -> !week.equals(held.confirmed().get(visit.truck()))),
                visits.stream().map(visit -> visit(plan, visit, held, truck)).toList());
    }

    private static PlanView.Visit visit(DepotPlan plan, Visit visit, Holds held, String truck) {
        VisitStates.State state = VisitStates.of(plan, visit, held);
        return new PlanView.Visit(
                visit.truck(),
                plan.work(visit),
                days(plan, visit),
                DisplayFormat.tenth(visit.labourHours()),
                state.mark(),
                state.words(),
                state.strong(),
                waiting(plan, visit),
                visit.why(),
                held.pins().containsKey(visit.truck()) || held.blocked().containsKey(visit.truck()),
                visit.truck().equals(truck));
    }

    static String days(DepotPlan plan, Visit visit) {
        return DepotDays.find(plan.plan().days(), visit)
                .map(PlanFiller::days)
                .orElse("in " + DisplayFormat.week(visit.week()));
    }

    private static String days(Laid laid) {
        String from = DisplayFormat.day(laid.start().toLocalDate());
        String to = DisplayFormat.day(laid.end().toLocalDate());
        return from.equals(to) ? from : from + " to " + to;
    }

    private static String waiting(DepotPlan plan, Visit visit) {
        if (visit.diagnosis()) {
            return "safety: bring in now";
        }
        VisitReason reason =
                plan.findReason(visit.truck()).map(TruckReason::reason).orElse(null);
        Double later = reason == null ? null : reason.weekLater();
        if (reason == null || later == null) {
            return "last week of the plan";
        }
        return DisplayFormat.more(later)
                + (reason.laterLimit() == null ? "" : ", not possible: " + reason.laterLimit());
    }
}
