package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.download.Download;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.PlanOfDepots;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.app.web.outlook.Outlooks;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.coolant.CoolantWorkbook;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.work.UpcomingWorkbook;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The order list, cores and claims, coolant; and the plan in force as workbooks. */
@Controller
public class OrderPages {
    private static final Set<String> NAMES = Set.of("upcoming-work", "parts-needs", "coolant");

    /**
     * What a workbook is of.
     *
     * @param plans numbers of its depots' plans
     * @param stored changes of the store before it was asked for
     * @param ahead whether the year ahead is worked out and goes in
     */
    private record Workbook(String name, List<String> depots, List<Long> plans, long stored, boolean ahead) {}

    private final Office office;
    private final Store store;
    private final Downloads downloads;
    private final Planning planning;
    private final Outlooks outlooks;

    OrderPages(Office office, Application application, Downloads downloads, Outlooks outlooks) {
        this.outlooks = outlooks;
        this.office = office;
        this.store = application.store();
        this.downloads = downloads;
        this.planning = application.planning();
    }

    @GetMapping("/order")
    String order(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        String page = page(viewer, depot, model, OrderViews::order);
        if (!page.equals("tables")) {
            return page;
        }
        model.addAttribute("forms", OrderForms.of(office.choose(viewer, depot)));
        model.addAttribute("mayOrder", viewer.is(Role.MANAGER, Role.BUYER));
        model.addAttribute("mayTransfer", viewer.is(Role.MANAGER, Role.BUYER) && viewer.depot() == null);
        return "order";
    }

    @GetMapping("/coolant")
    String coolant(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        return page(viewer, depot, model, OrderViews::coolant);
    }

    private String page(Viewer viewer, String depot, Model model, Function<OrderViews, TablesView> view) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("view", view.apply(new OrderViews(chosen)));
        return "tables";
    }

    /**
     * A workbook of the plans in force at the depots chosen, which holds those depots alone. While it is being made, a page that
     * says how far it is and asks again by itself.
     */
    @GetMapping("/sheets/{name}.xlsx")
    Object sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("name") String name,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            HttpServletResponse response,
            Model model) {
        if (name.equals("parts-needs")) {
            Permissions.require(viewer, Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR);
        }
        if (!NAMES.contains(name)) {
            throw new NotHereException(
                    "There is no workbook \"" + name + "\". Fix: take upcoming-work, parts-needs or coolant.");
        }
        ChosenDepots chosen = office.choose(viewer, depot);
        if (!chosen.anyPlan()) {
            throw new NotHereException("No plan is in force. Fix: replan on the Plan page first.");
        }
        List<DepotPlan> plans = office.asWritten(chosen.plans());
        Workbook wanted = new Workbook(
                name,
                plans.stream().map(DepotPlan::depot).toList(),
                plans.stream().map(plan -> plan.kept().id()).toList(),
                store.changes(),
                name.equals("parts-needs") && outlooks.findYear(chosen).isPresent());
        return downloads.answer(
                wanted,
                (progress, out) -> write(wanted, plans, chosen, progress, out),
                FileOffer.workbook(name + ".xlsx", Address.plan(depot)),
                response,
                model);
    }

    private void write(Workbook wanted, List<DepotPlan> plans, ChosenDepots chosen, Download progress, OutputStream out)
            throws IOException {
        Plan content = PlanOfDepots.of(plans);
        progress.step("writing the workbook");
        switch (wanted.name()) {
            case "upcoming-work" -> new UpcomingWorkbook(trucks(plans), content).write(out, office.form());
            case "parts-needs" -> {
                progress.step("reading the fleet");
                FleetSnapshot fleet = planning.fleet(chosen.only());
                progress.step("writing the workbook");
                new PartsWorkbook(fleet, content, outlooks.findYear(chosen).orElse(null)).write(out, office.form());
            }
            default -> new CoolantWorkbook(content).write(out, office.form());
        }
    }

    /** From the copies at hand: reading the whole fleet again cost more than writing the workbook. */
    private static List<Truck> trucks(List<DepotPlan> plans) {
        return plans.stream()
                .flatMap(plan -> plan.fleet().fleet().trucks().stream())
                .toList();
    }
}
