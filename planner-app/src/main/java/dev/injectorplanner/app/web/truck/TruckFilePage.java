package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.SafetyCase;
import java.util.List;
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

/** The file of one truck, the advice for an open engine, and the record an audit asks for. */
@Controller
public class TruckFilePage {
    private static final int SHOWN = 12;

    private final Application application;
    private final Office office;

    TruckFilePage(Application application, Office office) {
        this.application = application;
        this.office = office;
    }

    /** A set of cylinders to do while the engine is open. */
    public record Set(
            String name,
            String cylinders,
            String hours,
            String cost,
            String sharedCost,
            String left,
            boolean best,
            List<VisitBill.Line> bill,
            String sum) {}

    @GetMapping("/trucks/{truck}")
    String file(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "failed", defaultValue = "") List<Integer> failed,
            @RequestParam(name = "all", defaultValue = "false") boolean all,
            Model model) {
        DepotPlan plan = planOf(viewer, name);
        TruckFile.View view =
                new TruckFile(plan, truck(plan, name), application.planning().policy()).view();
        model.addAttribute("view", view);
        model.addAttribute("shown", all ? view.history().size() : SHOWN);
        model.addAttribute("failed", failed);
        model.addAttribute(
                "holds",
                application.holds().list(plan.depot()).stream()
                        .filter(hold -> hold.truck().equals(name))
                        .toList());
        model.addAttribute(
                "safety",
                plan.safety().stream()
                        .filter(each -> each.truck().equals(name))
                        .map(SafetyCase::words)
                        .toList());
        model.addAttribute("looks", SafetyPage.looks(plan, name));
        model.addAttribute("photos", new Photos(application.store()).ofTruck(name));
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!failed.isEmpty()) {
            Advisor.Advice advice = Advisor.advise(
                    plan.fleet().fleet(), application.planning().policy(), plan.today(), name, failed, List.of());
            model.addAttribute("sets", sets(advice, plan, name));
            model.addAttribute("advice", advice.why());
        }
        return "truck";
    }

    private List<Set> sets(Advisor.Advice advice, DepotPlan plan, String truck) {
        return advice.options().stream()
                .map(option -> {
                    SetBill bill = new SetBill(
                            plan, truck(plan, truck), application.planning().policy(), option);
                    return new Set(
                            option.name(),
                            DisplayFormat.numbers(option.cylinders()),
                            DisplayFormat.tenth(option.hours()),
                            DisplayFormat.more(option.cost()),
                            DisplayFormat.money(option.sharedCost()),
                            DisplayFormat.chance(option.chanceLeft()),
                            option.cylinders().equals(advice.best()),
                            bill.lines(),
                            DisplayFormat.money(bill.sum()));
                })
                .toList();
    }

    @GetMapping("/trucks/{truck}/record")
    String record(@ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name, Model model) {
        DepotPlan plan = planOf(viewer, name);
        model.addAttribute("record", new TruckRecord(plan, truck(plan, name)));
        return "truck-record";
    }

    @GetMapping("/trucks/{truck}/record.csv")
    ResponseEntity<byte[]> csv(@ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name) {
        DepotPlan plan = planOf(viewer, name);
        String file = "record-" + name.replaceAll("[^\\p{L}\\p{N}_-]+", "-") + ".csv";
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(file).build().toString())
                .body(new TruckRecord(plan, truck(plan, name)).csv());
    }

    private DepotPlan planOf(Viewer viewer, String truck) {
        return office.findDepotOf(viewer, truck)
                .flatMap(office::find)
                .orElseThrow(() -> new NotHereException("There is no truck \"" + truck
                        + "\" with a plan. Fix: find it under Trucks, or plan its depot first."));
    }

    private static Truck truck(DepotPlan plan, String name) {
        return plan.fleet().fleet().trucks().stream()
                .filter(each -> each.truck().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotHereException("Truck \"" + name + "\" no longer exists."));
    }
}
