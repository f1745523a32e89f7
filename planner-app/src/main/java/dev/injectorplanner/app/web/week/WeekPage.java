package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.desk.Desk;
import dev.injectorplanner.app.holds.HoldBook;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.start.StoreNeeds;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.frame.Navigation;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.Holds;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The week ahead. */
@Controller
public class WeekPage {
    private final Application application;
    private final Downloads downloads;
    private final Office office;
    private final HoldBook holds;
    private final WeekFiller filler;
    private final StoreNeeds needs;
    private final LiveState live;

    WeekPage(Office office, Application application, Downloads downloads, LiveState live) {
        this.live = live;
        this.application = application;
        this.downloads = downloads;
        this.office = office;
        this.holds = application.holds();
        this.needs = new StoreNeeds(application.store());
        this.filler = new WeekFiller(application.plans(), new Desk(application.store(), application.holds()));
    }

    /** Each reader's own page; who has several roles lands on the first of them. A store without trucks is set up first. */
    @GetMapping("/")
    String home(@ModelAttribute("viewer") Viewer viewer) {
        if (Navigation.mayGo(viewer, "/imports") && !needs.anyTruck()) {
            return "redirect:/imports/start";
        }
        if (viewer.is(Role.MANAGER)) {
            return "redirect:/week";
        }
        if (viewer.is(Role.BUYER)) {
            return "redirect:/order";
        }
        if (viewer.is(Role.STOREMAN)) {
            return "redirect:/store";
        }
        return viewer.is(Role.MECHANIC) ? "redirect:/bay" : "redirect:/settings";
    }

    @GetMapping("/week")
    String week(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "week", defaultValue = "") String week,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("live", live.of(viewer, chosen));
        model.addAttribute("shown", WeekFiller.SHOWN);
        model.addAttribute("key", UUID.randomUUID().toString());
        model.addAttribute("view", view(chosen, week));
        return "week";
    }

    private WeekView view(ChosenDepots chosen, String week) {
        Map<String, Holds> held = new TreeMap<>();
        for (DepotPlan plan : chosen.plans()) {
            held.put(plan.depot(), holds.holds(plan.depot(), plan.plan().firstWeek()));
        }
        return filler.of(chosen, week.isEmpty() ? null : IsoWeek.parse(week), held);
    }

    /** The week on one page, on the site's paper. */
    @GetMapping("/sheets/summary.pdf")
    Object summary(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "week", defaultValue = "") String week,
            HttpServletResponse response,
            Model model) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR);
        ChosenDepots chosen = office.choose(viewer, depot);
        if (!chosen.anyPlan()) {
            throw new NotHereException("No plan is in force. Fix: replan on the Plan page first.");
        }
        WeekView view = view(chosen, week);
        int sets = application.planning().policy().visits().keptSets();
        return downloads.answer(
                List.of(
                        "summary",
                        view.week(),
                        SummaryPaper.plans(chosen),
                        application.store().changes()),
                (progress, out) -> {
                    progress.step("writing the page");
                    new SummaryPaper(chosen, view, office.form(), sets)
                            .document(application.settings().siteName())
                            .write(office.form().paper(), out);
                },
                FileOffer.pdf("summary.pdf", "/week"),
                response,
                model);
    }
}
