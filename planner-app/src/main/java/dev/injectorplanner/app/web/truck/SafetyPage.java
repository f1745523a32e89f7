package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.OwnWords;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.RepairWork;
import dev.injectorplanner.core.plan.HeldOff;
import dev.injectorplanner.core.plan.SafetyCase;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A truck's safety faults: what closes them, and what holding their diagnosis off takes. */
@Controller
public class SafetyPage {
    private static final String PAGE = "/safety/{truck}";

    private final Application application;
    private final Office office;
    private final Replanning anew;
    private final SiteClock clock;

    SafetyPage(Application application, Office office, Replanning anew, SiteClock clock) {
        this.application = application;
        this.office = office;
        this.anew = anew;
        this.clock = clock;
    }

    /** @param reason why the diagnosis is to be held off, in the second step; empty in the first */
    @GetMapping(PAGE)
    String page(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String truck,
            @RequestParam(name = "reason", defaultValue = "") String reason,
            Model model) {
        DepotPlan plan = planOf(viewer, truck);
        OwnWords.keep(model, "done");
        Optional<SafetyCase> open = find(plan, truck);
        model.addAttribute("truck", truck);
        model.addAttribute("depot", plan.depot());
        model.addAttribute("today", plan.today());
        model.addAttribute("open", open.orElse(null));
        model.addAttribute("words", open.map(SafetyCase::words).orElse(""));
        model.addAttribute("warning", SafetyCase.WARNING);
        model.addAttribute("looks", looks(plan, truck));
        model.addAttribute("reason", reason.strip());
        model.addAttribute("mayHoldOff", open.isPresent() && viewer.is(Role.MANAGER));
        model.addAttribute(
                "works",
                Arrays.stream(RepairWork.values())
                        .filter(work -> work != RepairWork.NO_FAULT_FOUND)
                        .map(RepairWork::words)
                        .toList());
        List<Repair> repairs = new ArrayList<>(plan.fleet().repairsOf(truck));
        Collections.reverse(repairs);
        model.addAttribute("repairs", repairs);
        model.addAttribute("mayRecord", viewer.is(Role.MANAGER) || viewer.is(Role.MECHANIC));
        return "safety";
    }

    @PostMapping(PAGE + "/repair")
    String repair(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String truck,
            @RequestParam(name = "what", defaultValue = "") String other,
            @RequestParam(name = "work", defaultValue = "") List<String> work,
            @RequestParam(name = "cylinder", defaultValue = "") String cylinder,
            @RequestParam(name = "closes", defaultValue = "false") boolean closes,
            @RequestParam(name = "found", defaultValue = "repair") String found,
            @RequestParam("done_on") String doneOn,
            @RequestParam(name = "odometer", defaultValue = "") String odometer,
            @RequestParam(name = "hours", defaultValue = "") String hours,
            @RequestParam(name = "remark", defaultValue = "") String remark,
            @RequestParam("by") String by,
            RedirectAttributes next) {
        if (!viewer.is(Role.MECHANIC)) {
            Permissions.require(viewer, Role.MANAGER);
        }
        DepotPlan plan = planOf(viewer, truck);
        boolean nothing = found.equals("nothing");
        String what = words(work, cylinder.strip(), other.strip());
        Map<String, String> row = new LinkedHashMap<>();
        row.put("truck", truck);
        row.put("done_on", doneOn);
        row.put("odometer_" + plan.units().distanceUnit(), odometer);
        row.put("what", nothing ? Repair.foundNothing(codes(plan, truck)) : closes ? named(what, plan, truck) : what);
        row.put("hours", hours);
        row.put("remark", nothing ? (what + " " + remark).strip() : remark);
        row.put("by", by);
        new RepairEntry(application).record(row, clock.now(), viewer.name());
        anew.plan(viewer, plan.depot(), "repair of " + truck + " " + clock.now());
        next.addFlashAttribute("done", "Recorded for " + truck + ", and replanned.");
        return "redirect:/safety/{truck}";
    }

    /** Diagnoses that the open safety faults ask for. */
    static List<DiagnosisKind> looks(DepotPlan plan, String truck) {
        return codes(plan, truck).stream()
                .flatMap(code -> DiagnosisKind.of(new FaultCode(code)).stream())
                .distinct()
                .toList();
    }

    /** Codes of the open safety faults. */
    private static List<String> codes(DepotPlan plan, String truck) {
        return find(plan, truck).stream()
                .flatMap(each -> each.dueItems().stream())
                .map(DueItem::faultCode)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** {@code injector connector, cylinder 3; clip renewed}. */
    private static String words(List<String> work, String cylinder, String other) {
        List<String> words = new ArrayList<>();
        for (RepairWork each : RepairWork.values()) {
            if (work.contains(each.words())) {
                words.add(each.words());
            }
        }
        if (!words.isEmpty() && !cylinder.isEmpty()) {
            words.add((cylinder.matches("\\d+") ? "cylinder " : "cylinders ") + cylinder);
        }
        String done = String.join(", ", words);
        return done.isEmpty() || other.isEmpty() ? done + other : done + "; " + other;
    }

    /** With the codes of the open faults, so that the record says what it closes. */
    private static String named(String what, DepotPlan plan, String truck) {
        String codes = String.join(
                ", ", codes(find(plan, truck).map(SafetyCase::dueItems).orElse(List.of())));
        return codes.isEmpty() || what.isBlank() ? what : what.strip() + " (" + codes + ")";
    }

    @PostMapping(PAGE + "/hold-off")
    String holdOff(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String truck,
            @RequestParam("reason") String reason,
            @RequestParam(name = "confirm", defaultValue = "") String confirm,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        DepotPlan plan = planOf(viewer, truck);
        SafetyCase open = find(plan, truck)
                .orElseThrow(() -> new NotHereException("Truck " + truck + " has no open safety fault."));
        LocalDate since = plan.today();
        HeldOff held = new HeldOff(reason, viewer.name(), since, codes(open.dueItems()));
        application.safetyHolds().holdOff(truck, held, confirm.equals("yes"), clock.now());
        anew.plan(viewer, plan.depot(), "hold off " + truck + " " + clock.now());
        next.addFlashAttribute("done", "The diagnosis of " + truck + " is held off under your name, and replanned.");
        return "redirect:/safety/{truck}";
    }

    @PostMapping(PAGE + "/resume")
    String resume(
            @ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String truck, RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        DepotPlan plan = planOf(viewer, truck);
        application.safetyHolds().resume(truck, clock.now(), viewer.name());
        anew.plan(viewer, plan.depot(), "diagnosis of " + truck + " " + clock.now());
        next.addFlashAttribute("done", "The diagnosis of " + truck + " is planned again.");
        return "redirect:/safety/{truck}";
    }

    private static Set<String> codes(List<DueItem> items) {
        Set<String> codes = new TreeSet<>();
        for (DueItem item : items) {
            String code = item.faultCode();
            if (code != null) {
                codes.add(code);
            }
        }
        return codes;
    }

    private static Optional<SafetyCase> find(DepotPlan plan, String truck) {
        return plan.safety().stream().filter(each -> each.truck().equals(truck)).findFirst();
    }

    private DepotPlan planOf(Viewer viewer, String truck) {
        return office.findDepotOf(viewer, truck)
                .flatMap(office::find)
                .orElseThrow(() -> new NotHereException("There is no truck \"" + truck
                        + "\" with a plan. Fix: find it under Trucks, or plan its depot first."));
    }
}
