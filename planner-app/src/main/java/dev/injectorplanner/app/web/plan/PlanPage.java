package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.OwnWords;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.app.web.outlook.Outlooks;
import dev.injectorplanner.app.web.week.LiveState;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.SafetyCase;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The plan by week and depot; a visit is pinned, moved or refused here once its consequence was shown. */
@Controller
public class PlanPage {
    private static final String TO_PLAN = "redirect:/plan";

    private final Application application;
    private final Office office;
    private final Replanning anew;
    private final PlanChanges changing;
    private final SiteClock clock;
    private final Outlooks outlooks;
    private final LiveState live;

    PlanPage(
            Application application,
            Office office,
            Replanning anew,
            SiteClock clock,
            Outlooks outlooks,
            LiveState live) {
        this.live = live;
        this.outlooks = outlooks;
        this.application = application;
        this.office = office;
        this.anew = anew;
        this.changing = new PlanChanges(application, anew, clock);
        this.clock = clock;
    }

    @GetMapping("/plan")
    String plan(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "week", defaultValue = "") String week,
            @RequestParam(name = "truck", defaultValue = "") String truck,
            @RequestParam(name = "do", defaultValue = "") String act,
            @RequestParam(name = "to", defaultValue = "") String to,
            @RequestParam(name = "why", defaultValue = "") String why,
            @RequestParam(name = "day", defaultValue = "") String day,
            @RequestParam(name = "bay", defaultValue = "") String bay,
            @RequestParam(name = "start", defaultValue = "") String start,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        OwnWords.keep(model, "done");
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("live", live.of(viewer, chosen));
        Map<String, Holds> held = new TreeMap<>();
        for (DepotPlan each : chosen.plans()) {
            held.put(
                    each.depot(),
                    application.holds().holds(each.depot(), each.plan().firstWeek()));
        }
        model.addAttribute(
                "holdRows",
                chosen.plans().stream()
                        .flatMap(each -> HoldList.of(
                                each,
                                application.holds().list(each.depot()),
                                held.getOrDefault(each.depot(), Holds.none()))
                                .stream())
                        .toList());
        PlanFiller filler = new PlanFiller(
                held,
                application.planning().policy().visits(),
                outlooks.findLatestYear(office.choose(viewer, "")).orElse(null));
        model.addAttribute("view", filler.of(chosen, week.isEmpty() ? null : IsoWeek.parse(week), truck));
        model.addAttribute("safety", safety(chosen));
        if (!truck.isEmpty()) {
            model.addAttribute(
                    "change",
                    changing.open(
                            viewer, planOf(viewer, truck), truck, act, to, new ChangeView.Day(day, bay, start), why));
        }
        return "plan";
    }

    private static List<String> safety(ChosenDepots chosen) {
        return chosen.plans().stream()
                .flatMap(each -> each.safety().stream())
                .map(SafetyCase::words)
                .toList();
    }

    private DepotPlan planOf(Viewer viewer, String truck) {
        return office.findDepotOf(viewer, truck)
                .flatMap(office::find)
                .orElseThrow(() -> new NotHereException(
                        "No plan has a truck \"" + truck + "\". Fix: check its name under Trucks."));
    }

    @PostMapping("/plan/hold")
    String hold(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("truck") String truck,
            @RequestParam("do") String act,
            @RequestParam(name = "from", defaultValue = "") String from,
            @RequestParam(name = "to", defaultValue = "") String to,
            @RequestParam(name = "why", defaultValue = "") String why,
            @RequestParam(name = "day", defaultValue = "") String day,
            @RequestParam(name = "bay", defaultValue = "") String bay,
            @RequestParam(name = "start", defaultValue = "") String start,
            @RequestParam(name = "shown", required = false) @Nullable String shown,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        DepotPlan plan = planOf(viewer, truck);
        VisitAction what =
                act.equals("day") ? VisitAction.toDay(truck, day, bay, start) : VisitAction.of(act, truck, from, to);
        changing.make(viewer, plan, what, why.strip());
        return shown(
                next,
                shown == null ? plan.depot() : shown,
                what.week() == null ? from : String.valueOf(what.week()),
                what.words() + ": done.");
    }

    @PostMapping("/plan/release")
    String release(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("truck") String truck,
            @RequestParam(name = "shown", required = false) @Nullable String shown,
            @RequestParam(name = "list", defaultValue = "") String list,
            @RequestParam(name = "from", defaultValue = "0") int from,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        DepotPlan plan = planOf(viewer, truck);
        changing.release(viewer, plan, truck);
        if (!list.isEmpty()) { // back to the rows that were shown
            next.addAttribute("list", list).addAttribute("from", from);
        }
        return shown(next, shown == null ? plan.depot() : shown, "", truck + " released and replanned.");
    }

    @PostMapping("/plan/confirm")
    String confirm(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("depot") String depot,
            @RequestParam("week") String week,
            @RequestParam(name = "shown", required = false) @Nullable String shown,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        office.choose(viewer, depot);
        int added = application
                .confirmation()
                .confirm(depot, IsoWeek.parse(week), clock.now(), viewer.name())
                .added();
        return shown(
                next,
                shown == null ? depot : shown,
                week,
                added + " visits of " + depot + " confirmed for " + week + ".");
    }

    @PostMapping("/plan/anew")
    String anew(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("depot") String depot,
            @RequestParam(name = "shown", required = false) @Nullable String shown,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        office.choose(viewer, depot);
        anew.plan(viewer, depot, "by hand " + clock.now());
        return shown(next, shown == null ? depot : shown, "", "Replanned.");
    }

    private static String shown(RedirectAttributes next, String depot, String week, String done) {
        if (!depot.isEmpty()) {
            next.addAttribute("depot", depot);
        }
        if (!week.isEmpty()) {
            next.addAttribute("week", week);
        }
        next.addFlashAttribute("done", done);
        return TO_PLAN;
    }
}
