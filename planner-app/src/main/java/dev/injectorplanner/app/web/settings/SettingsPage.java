package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.Chosen;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Said;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.app.web.office.TablesView.Field;
import dev.injectorplanner.app.web.office.TablesView.Rows;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.plan.Assumption;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What the program works with: families, access steps, depots, rules, and what the plan takes as given. */
@Controller
public class SettingsPage {
    private static final String BY_FILE =
            "Read only here: change it with a file under Imports; the templates show the columns.";

    private final Office office;

    SettingsPage(Office office) {
        this.office = office;
    }

    @GetMapping("/settings")
    String settings(@ModelAttribute("viewer") Viewer viewer, Model model) {
        Chosen chosen = office.choose(viewer, "");
        model.addAttribute("chosen", chosen);
        model.addAttribute("view", view(chosen.plans()));
        return "tables";
    }

    static TablesView view(List<DepotPlan> plans) {
        Set<EngineFamily> families = new LinkedHashSet<>();
        Set<AccessStep> steps = new LinkedHashSet<>();
        Set<Rule> rules = new LinkedHashSet<>();
        Set<Assumption> assumptions = new LinkedHashSet<>();
        Rows depots = new Rows(
                "A",
                "Depots",
                "Depot",
                "#Bays",
                "#Hours a day",
                "#Cost an hour",
                "#Overtime an hour",
                "#Overtime h a week",
                "Time zone");
        for (DepotPlan plan : plans) {
            families.addAll(plan.fleet().fleet().engineFamilies());
            steps.addAll(plan.fleet().fleet().access());
            rules.addAll(plan.fleet().fleet().rules());
            assumptions.addAll(plan.plan().assumptions());
            depot(depots, plan.site());
        }
        return new TablesView(
                "Settings",
                "Units: km, hours, litres, degrees C. Miles and US gallons are read from files whose headings say so; pages show km.",
                "/settings",
                List.of(),
                List.of(new Field("Imports", "/imports"), new Field("Jobs", "/jobs")),
                List.of(
                        depots.section(
                                "", BY_FILE, "No plan yet: load files, then plan; what it works with shows here."),
                        families(families),
                        steps(steps),
                        rules(rules),
                        assumptions(assumptions)));
    }

    private static void depot(Rows rows, Depot depot) {
        rows.row(
                depot.depot(),
                String.valueOf(depot.bays()),
                Said.tenth(depot.labourHoursPerDay()),
                depot.labourPerHour().toPlainString(),
                depot.overtimePerHour().toPlainString(),
                Said.tenth(depot.overtimeHoursPerWeek()),
                depot.timeZone().toString());
    }

    private static TablesView.Section families(Set<EngineFamily> families) {
        Rows rows = new Rows(
                "B",
                "Engine families",
                "Family",
                "#Cylinders",
                "Firing order",
                "#Hours a cylinder",
                "#Coolant l",
                "#Glycol %",
                "Injector",
                "#Road failure");
        families.forEach(each -> rows.row(
                each.family(),
                String.valueOf(each.cylinders()),
                Said.numbers(each.firingOrder()),
                Said.tenth(each.cylinderHours()),
                Said.tenth(each.coolantLitres()),
                Said.tenth(each.glycolPercent()),
                each.injectorPart(),
                Said.money(each.roadFailureCost().doubleValue())));
        return rows.section("", BY_FILE, "None.");
    }

    private static TablesView.Section steps(Set<AccessStep> steps) {
        Rows rows =
                new Rows("C", "Access steps", "Step", "Family", "#Order", "#Hours", "Serves cylinders", "#Drains %");
        steps.forEach(each -> rows.row(
                each.step(),
                each.family(),
                String.valueOf(each.order()),
                Said.tenth(each.hours()),
                each.cylinders().isEmpty() ? "all" : Said.numbers(each.cylinders()),
                Said.tenth(each.drainsCoolantPercent())));
        return rows.section("", BY_FILE, "None.");
    }

    private static TablesView.Section rules(Set<Rule> rules) {
        Rows rows = new Rows("D", "The site’s rules", "Rule", "Family", "#Limit", "#Window, days");
        rules.forEach(each -> rows.row(
                each.rule().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                each.family() == null ? "all" : each.family(),
                Said.pieces(each.limit()),
                each.windowDays() == null ? "" : String.valueOf(each.windowDays())));
        return rows.section("", BY_FILE, "The site has set none: planner defaults hold, see E.");
    }

    private static TablesView.Section assumptions(Set<Assumption> assumptions) {
        Rows rows = new Rows("E", "What the plan takes as given", "About", "Assumption", "Whose");
        assumptions.forEach(each -> rows.row(each.topic(), each.text(), each.source()));
        return rows.section(
                "",
                "Planner defaults hold until the site sets its own; costs and limits of the plan cannot be changed here yet.",
                "No plan yet.");
    }
}
