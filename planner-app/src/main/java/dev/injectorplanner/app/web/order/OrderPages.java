package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.PlanOfDepots;
import dev.injectorplanner.app.web.office.TablesView;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.reports.coolant.CoolantWorkbook;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.work.UpcomingWorkbook;
import java.util.function.Function;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.method.annotation.StreamingResponseBody;

/** The order list, cores and claims, coolant; and the plan in force as workbooks. */
@Controller
public class OrderPages {
    private static final MediaType WORKBOOK =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    private final Office office;
    private final Planning planning;

    OrderPages(Office office, Application application) {
        this.office = office;
        this.planning = application.planning();
    }

    @GetMapping("/order")
    String order(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        return page(viewer, depot, model, OrderViews::order);
    }

    @GetMapping("/returns")
    String returns(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        return page(viewer, depot, model, OrderViews::returns);
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

    /** A workbook of the plans in force at the depots chosen, which speaks of those depots alone. */
    @GetMapping("/sheets/{name}.xlsx")
    ResponseEntity<StreamingResponseBody> sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("name") String name,
            @RequestParam(name = "depot", defaultValue = "") String depot) {
        if (name.equals("parts-needs")) {
            Permissions.require(viewer, Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR);
        }
        ChosenDepots chosen = office.choose(viewer, depot);
        if (!chosen.anyPlan()) {
            throw new NotHereException("No plan is in force. Mend: plan first, under Plan.");
        }
        Plan content = PlanOfDepots.of(office.asWritten(chosen.plans()));
        FleetSnapshot fleet = planning.fleet(chosen.only());
        StreamingResponseBody body = switch (name) {
            case "upcoming-work" -> out -> new UpcomingWorkbook(fleet, content).write(out);
            case "parts-needs" -> out -> new PartsWorkbook(fleet, content).write(out);
            case "coolant" -> out -> new CoolantWorkbook(content).write(out);
            default ->
                throw new NotHereException(
                        "There is no workbook \"" + name + "\". Mend: take upcoming-work, parts-needs or coolant.");
        };
        return ResponseEntity.ok()
                .contentType(WORKBOOK)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(name + ".xlsx")
                                .build()
                                .toString())
                .body(body);
    }
}
