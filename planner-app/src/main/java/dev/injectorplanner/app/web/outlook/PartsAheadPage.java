package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.replay.outlook.Outlook;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Needs by part and month for the next 12 months, for agreeing volumes with suppliers. */
@Controller
public class PartsAheadPage {
    private final Office office;
    private final Outlooks outlooks;

    PartsAheadPage(Office office, Outlooks outlooks) {
        this.office = office;
        this.outlooks = outlooks;
    }

    @GetMapping("/outlook/parts")
    String parts(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            HttpServletResponse response,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        BackgroundWork.Job<Outlook> making = outlooks.ask(chosen, Outlooks.YEAR);
        Optional<Outlook> found = making.find();
        if (found.isEmpty()) {
            model.addAttribute("progress", making.progress());
            model.addAttribute("months", Outlooks.YEAR);
            model.addAttribute("again", "/outlook/parts?depot=" + Address.escaped(depot));
            response.setHeader("Refresh", OutlookPage.SECONDS_TO_NEXT_LOOK);
            return "outlook-wait";
        }
        model.addAttribute("view", PartsAheadView.of(found.get(), chosen));
        return "parts-ahead";
    }
}
