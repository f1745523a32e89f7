package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.reports.outlook.OutlookWorkbook;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Parts, hours, coolant, money and failures by month. */
@Controller
public class OutlookPage {
    /** Months that can be chosen. */
    static final List<Integer> MONTHS = List.of(6, 12, 24, 36);

    static final String SECONDS_TO_NEXT_LOOK = "2";

    private final Office office;
    private final Planning planning;
    private final Store store;
    private final Downloads downloads;
    private final Outlooks outlooks;

    /**
     * What a workbook is of.
     *
     * @param stored changes of the store before it was asked for
     */
    private record Workbook(Outlooks.Question question, long stored) {}

    OutlookPage(Application application, Office office, Downloads downloads, Outlooks outlooks) {
        this.outlooks = outlooks;
        this.planning = application.planning();
        this.store = application.store();
        this.downloads = downloads;
        this.office = office;
    }

    @GetMapping("/outlook")
    String outlook(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "months", defaultValue = "12") int months,
            HttpServletResponse response,
            Model model) {
        check(months);
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("months", months);
        model.addAttribute("choices", MONTHS);
        BackgroundWork.Job<Outlook> making = outlooks.ask(chosen, months);
        Optional<Outlook> found = making.find();
        if (found.isEmpty()) {
            model.addAttribute("progress", making.progress());
            model.addAttribute("again", Address.outlook(depot, months));
            response.setHeader("Refresh", SECONDS_TO_NEXT_LOOK);
            return "outlook-wait";
        }
        model.addAttribute("view", new OutlookView(found.get(), chosen));
        return "outlook";
    }

    /** The same as a workbook; where it is not worked out yet, the page that says so. */
    @GetMapping("/outlook/outlook.xlsx")
    Object workbook(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "months", defaultValue = "12") int months,
            HttpServletResponse response,
            Model model) {
        check(months);
        ChosenDepots chosen = office.choose(viewer, depot);
        Optional<Outlook> found =
                chosen.anyPlan() ? outlooks.ask(chosen, months).find() : Optional.empty();
        if (found.isEmpty()) {
            return "redirect:" + Address.outlook(depot, months);
        }
        String only = chosen.only();
        return downloads.answer(
                new Workbook(Outlooks.question(chosen, months), store.changes()),
                (progress, out) -> {
                    progress.step("reading the fleet");
                    FleetSnapshot fleet = planning.fleet(only);
                    progress.step("writing the workbook");
                    new OutlookWorkbook(fleet, found.get()).write(out, office.form());
                },
                FileOffer.workbook("outlook.xlsx", Address.outlook(depot, months)),
                response,
                model);
    }

    private static void check(int months) {
        if (!MONTHS.contains(months)) {
            throw new InvalidValueException(
                    "months", months, "is not one of the months that can be chosen", "choose one of " + MONTHS);
        }
    }
}
