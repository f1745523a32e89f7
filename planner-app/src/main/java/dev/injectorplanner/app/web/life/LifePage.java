package dev.injectorplanner.app.web.life;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.Office;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** How long injectors live, as the records say and as the plan takes it. */
@Controller
public class LifePage {
    private final Office office;
    private final Planning planning;

    LifePage(Application application, Office office) {
        this.planning = application.planning();
        this.office = office;
    }

    @GetMapping("/life")
    String life(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("curves", new LifeCurves(chosen.plans(), planning.policy(), chosen.units()).curves());
        return "life";
    }
}
