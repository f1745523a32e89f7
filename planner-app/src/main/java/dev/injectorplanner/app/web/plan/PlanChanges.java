package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Tries changes out, and makes them. */
public final class PlanChanges {
    private final Application application;
    private final Replanning anew;
    private final SiteClock clock;

    public PlanChanges(Application application, Replanning anew, SiteClock clock) {
        this.application = application;
        this.anew = anew;
        this.clock = clock;
    }

    /** A truck's visit opened to be changed; tried out where {@code act} is not empty. */
    ChangeView open(
            Viewer viewer, DepotPlan plan, String truck, String act, String to, ChangeView.Day day, String why) {
        Optional<Visit> visit = plan.findVisit(truck);
        String from = visit.map(each -> each.week().toString()).orElse("");
        IsoWeek first = plan.plan().firstWeek();
        List<ChangeView.Choice> weeks = IntStream.range(0, plan.plan().weeks())
                .mapToObj(first::plus)
                .filter(week -> !week.toString().equals(from))
                .map(week -> new ChangeView.Choice(week.toString(), hours(plan, week)))
                .toList();
        boolean held = application.holds().list(plan.depot()).stream()
                .anyMatch(hold -> hold.truck().equals(truck));
        boolean toDay = act.equals("day");
        VisitAction asked = act.isEmpty()
                ? null
                : toDay
                        ? VisitAction.toDay(truck, day.on(), day.bay(), day.start())
                        : VisitAction.of(act, truck, from, to);
        return new ChangeView(
                truck,
                plan.depot(),
                from,
                visit.map(plan::work).orElse("no visit"),
                act.isEmpty() ? "move" : act,
                weeks,
                to.isEmpty() ? visit.map(each -> each.week().plus(1).toString()).orElse(first.toString()) : to,
                why,
                held,
                asked == null ? List.of() : List.of(tried(viewer, plan, asked)),
                day.on().isEmpty() ? dayOf(plan, visit) : day);
    }

    /** Where the visit stands now; empty where it has no day. */
    private static ChangeView.Day dayOf(DepotPlan plan, Optional<Visit> visit) {
        return visit.flatMap(each -> DepotDays.find(plan.plan().days(), each))
                .map(laid -> new ChangeView.Day(
                        laid.start().toLocalDate().toString(),
                        String.valueOf(laid.bay()),
                        laid.start().toLocalTime().toString()))
                .orElse(new ChangeView.Day("", "", ""));
    }

    private static String hours(DepotPlan plan, IsoWeek week) {
        return week
                + plan.findLoad(week)
                        .map(load -> ", " + DisplayFormat.tenth(load.labourHours()) + " of "
                                + DisplayFormat.tenth(load.availableHours()) + " h")
                        .orElse("");
    }

    private ChangeView.Tried tried(Viewer viewer, DepotPlan plan, VisitAction act) {
        Planning.Tried tried = application
                .planning()
                .tryOut(
                        anew.day(plan.kept(), plan.site().timeZone()),
                        application.planning().policy(),
                        Replanning.scope(viewer, plan),
                        act.tried(),
                        List.of());
        return Consequence.of(act, tried.change(), tried.planned().plan().cost());
    }

    /** Holds the truck and replans. */
    void make(Viewer viewer, DepotPlan plan, VisitAction act, String why) {
        application.holds().hold(act.hold(clock.now(), viewer.name(), why));
        anew.plan(viewer, plan.depot(), "hold " + act.truck() + " " + clock.now());
    }

    /** Takes back all holds of a truck and replans. */
    void release(Viewer viewer, DepotPlan plan, String truck) {
        application.holds().release(truck, clock.now(), viewer.name());
        anew.plan(viewer, plan.depot(), "release " + truck + " " + clock.now());
    }
}
