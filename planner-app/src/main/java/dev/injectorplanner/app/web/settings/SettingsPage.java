package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.plan.Assumption;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Where what can be set is set, and what the plan in force takes as given, with the source of each figure. */
@Controller
public class SettingsPage {
    private final Office office;
    private final OutdatedPlans before;

    SettingsPage(Office office, OutdatedPlans before) {
        this.office = office;
        this.before = before;
    }

    @GetMapping("/settings")
    String settings(@ModelAttribute("viewer") Viewer viewer, Model model) {
        ChosenDepots chosen = office.choose(viewer, "");
        model.addAttribute("chosen", chosen);
        model.addAttribute("assumptions", assumptions(chosen.plans()));
        model.addAttribute("before", before.depots(viewer));
        return "settings";
    }

    static List<Assumption> assumptions(List<DepotPlan> plans) {
        Set<Assumption> assumptions = new LinkedHashSet<>();
        plans.forEach(plan -> assumptions.addAll(plan.plan().assumptions()));
        return new ArrayList<>(assumptions);
    }
}
