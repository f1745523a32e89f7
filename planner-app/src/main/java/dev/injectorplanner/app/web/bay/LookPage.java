package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.diagnosis.Look;
import dev.injectorplanner.app.diagnosis.LookBook;
import dev.injectorplanner.app.diagnosis.LookForm;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.app.web.truck.RepairEntry;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.diagnosis.DiagnosisStep;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.RepairWork;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A diagnosis in the usual order of looking, on a phone; it ends in a repair, a replacement, or "no fault found". */
@Controller
class LookPage {
    private static final int NOT_KEPT = 422;

    /** Characters that a repair's remark takes. */
    private static final int LONGEST_REMARK = 2_000;

    private static final String NOTHING = "nothing";
    private static final String REPLACE = "replace";

    /** How a diagnosis can end. */
    private static final Set<String> ENDS = Set.of("repair", NOTHING, REPLACE);

    private final BayDesk desk;
    private final LookBook looks;
    private final RepairEntry repairs;
    private final Replanning anew;

    LookPage(BayDesk desk, Application application, Replanning anew) {
        this.desk = desk;
        this.looks = new LookBook(application.store());
        this.repairs = new RepairEntry(application);
        this.anew = anew;
    }

    @GetMapping("/bay/{truck}/look/{kind}")
    String page(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @PathVariable("kind") String key,
            Model model) {
        DiagnosisKind kind = kind(key);
        TruckInBay at = desk.truck(viewer, name);
        FormState typed = new FormState();
        Map<String, Look> open = looks.open(name, kind);
        for (DiagnosisStep step : kind.steps()) {
            Look look = open.get(step.key());
            String state =
                    look == null ? Look.State.NOT_LOOKED.name() : look.state().name();
            typed.put("state." + step.key(), state);
            typed.put("found." + step.key(), look == null ? "" : look.found());
            typed.put("was.state." + step.key(), state);
            typed.put("was.found." + step.key(), look == null ? "" : look.found());
        }
        typed.put("formKey", UUID.randomUUID());
        typed.put("doneOn", at.today());
        return show(at, kind, typed, model);
    }

    /** Keeps what was found; with {@code end} the diagnosis ends as well: repair, nothing, replace. */
    @PostMapping("/bay/{truck}/look/{kind}")
    String keep(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @PathVariable("kind") String key,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        DiagnosisKind kind = kind(key);
        TruckInBay at = desk.truck(viewer, name);
        FormState typed = new FormState(sent);
        Map<String, List<String>> content = new TreeMap<>(sent);
        content.remove("_csrf");
        try {
            return "redirect:" + kept(at, kind, typed, content.toString(), viewer);
        } catch (RefusedEntryException e) {
            for (EntryProblem problem : e.problems()) {
                typed.wrong(problem);
            }
        } catch (InvalidValueException e) {
            typed.wrong(new EntryProblem("what", String.valueOf(e.getMessage())));
        }
        response.setStatus(NOT_KEPT);
        return show(at, kind, typed, model);
    }

    /** Keeps it, unless it arrived before; returns where its sender goes on. */
    private String kept(TruckInBay at, DiagnosisKind kind, FormState typed, String content, Viewer viewer) {
        String truck = at.truck().truck();
        String end = ENDS.contains(typed.text("end")) ? typed.text("end") : "";
        LookForm form = new LookForm(typed.text("formKey"), end.equals(REPLACE) ? "" : end, content);
        Optional<String> before = looks.did(form);
        if (before.isEmpty()) {
            Map<String, Look> shown = looks(kind, typed, "was.", viewer);
            Map<String, Look> found = looks.note(
                    truck,
                    kind,
                    looks(kind, typed, "", viewer),
                    shown,
                    form,
                    desk.clock().now(),
                    viewer.name());
            if (!form.end().isEmpty()) {
                record(at, kind, typed, viewer, found, form);
            }
        }
        if (end.equals(REPLACE)) {
            return replacement(at, kind, typed);
        }
        String ended = before.orElse(end);
        return BayAddresses.bay(truck) + "/look/" + kind.key() + (ended.isEmpty() ? "" : "?ended=" + ended);
    }

    /** @param as {@code was.} for the steps as they were shown, empty for what was made of them */
    private static Map<String, Look> looks(DiagnosisKind kind, FormState typed, String as, Viewer viewer) {
        Map<String, Look> found = new LinkedHashMap<>();
        for (DiagnosisStep step : kind.steps()) {
            if (!typed.given(as + "state." + step.key())) {
                continue;
            }
            String state = typed.text(as + "state." + step.key());
            Look.State how = Arrays.stream(Look.State.values())
                    .filter(each -> each.name().equals(state))
                    .findFirst()
                    .orElse(Look.State.NOT_LOOKED);
            found.put(
                    step.key(),
                    new Look(
                            step.key(),
                            how,
                            typed.text(as + "found." + step.key()).strip(),
                            java.time.Instant.EPOCH,
                            viewer.name()));
        }
        return found;
    }

    /** The cylinders that get another injector: a job of their own; the diagnosis ends when it starts. */
    private static String replacement(TruckInBay at, DiagnosisKind kind, FormState typed) {
        List<String> failed = typed.all("failed");
        if (failed.isEmpty()) {
            throw RefusedEntryException.of(
                    "failed", "cylinders: none is chosen", "press each cylinder whose injector is at fault");
        }
        return BayAddresses.start(at.truck().truck()) + "?look=" + kind.key() + "&failed="
                + String.join(
                        "&failed=",
                        failed.stream().filter(each -> each.matches("\\d{1,2}")).toList());
    }

    private void record(
            TruckInBay at, DiagnosisKind kind, FormState typed, Viewer viewer, Map<String, Look> found, LookForm form) {
        boolean nothing = form.end().equals(NOTHING);
        String truck = at.truck().truck();
        String steps = LookBook.words(kind, found);
        if (steps.isEmpty()) {
            throw RefusedEntryException.of(
                    "what", "nothing was looked at yet", "say at one step at least how it was found");
        }
        String what = nothing ? Repair.foundNothing(codes(at, kind)) : what(at, kind, typed);
        if (what.isBlank()) {
            throw RefusedEntryException.of("what", "repair: is empty", "choose what was done, or say it");
        }
        Map<String, String> row = new LinkedHashMap<>();
        row.put("truck", truck);
        row.put("done_on", typed.text("doneOn").isBlank() ? at.today().toString() : typed.text("doneOn"));
        row.put("odometer_" + at.units().distanceUnit(), typed.text("odometer"));
        row.put("what", what);
        row.put("hours", typed.text("hours").replace(',', '.'));
        row.put("remark", whole(steps));
        row.put("by", viewer.name());
        repairs.record(row, desk.clock().now(), viewer.name());
        looks.end(truck, kind, what, form, desk.clock().now(), viewer.name());
        desk.changed();
        anew.plan(
                viewer,
                at.depot().depot(),
                "diagnosis of " + truck + " " + desk.clock().now());
    }

    /** All that was found goes into the record, or it is not recorded. */
    private static String whole(String remark) {
        if (remark.length() > LONGEST_REMARK) {
            throw RefusedEntryException.of(
                    "what",
                    "what was found has " + remark.length() + " characters, the record takes " + LONGEST_REMARK,
                    "shorten what was found at the steps");
        }
        return remark;
    }

    /** The work, its cylinders where the wiring was at fault, and the codes that it answers. */
    private static String what(TruckInBay at, DiagnosisKind kind, FormState typed) {
        List<String> words = new ArrayList<>();
        typed.all("work").stream().filter(each -> works(kind).contains(each)).forEach(words::add);
        if (!words.isEmpty() && kind == DiagnosisKind.CIRCUIT) {
            if (typed.all("failed").isEmpty()) {
                throw RefusedEntryException.of(
                        "failed", "cylinders: none is chosen", "press each cylinder whose wiring was repaired");
            }
            words.add((typed.all("failed").size() == 1 ? "cylinder " : "cylinders ")
                    + String.join(" ", typed.all("failed")));
        }
        String other = typed.text("what").strip();
        String what = String.join(", ", words) + (words.isEmpty() || other.isEmpty() ? "" : "; ") + other;
        String codes = String.join(", ", codes(at, kind));
        return what.isBlank() || codes.isEmpty() || kind == DiagnosisKind.CIRCUIT ? what : what + " (" + codes + ")";
    }

    static TreeSet<String> codes(TruckInBay at, DiagnosisKind kind) {
        TreeSet<String> codes = new TreeSet<>();
        for (Fault fault : at.openFaults()) {
            DiagnosisKind.of(fault.code())
                    .filter(each -> each == kind)
                    .ifPresent(each -> codes.add(fault.code().text()));
        }
        return codes;
    }

    private static List<String> works(DiagnosisKind kind) {
        return kind.steps().stream()
                .map(DiagnosisStep::repair)
                .filter(java.util.Objects::nonNull)
                .map(RepairWork::words)
                .distinct()
                .toList();
    }

    private static DiagnosisKind kind(String key) {
        return DiagnosisKind.find(key).orElseThrow(BayDesk::notThere);
    }

    private static String show(TruckInBay at, DiagnosisKind kind, FormState typed, Model model) {
        long looked = kind.steps().stream()
                .filter(step -> typed.text("state." + step.key()).equals("IN_ORDER")
                        || typed.text("state." + step.key()).equals("CAUSE"))
                .count();
        model.addAttribute("at", at);
        model.addAttribute("kind", kind);
        model.addAttribute("looked", looked);
        model.addAttribute(
                "codes",
                codes(at, kind).stream()
                        .map(code -> new dev.injectorplanner.core.fleet.FaultCode(code).inWords())
                        .toList());
        model.addAttribute("works", works(kind));
        model.addAttribute("cylinders", at.family().allCylinders());
        model.addAttribute("form", typed);
        model.addAttribute("again", !typed.allWrong().isEmpty());
        return "look";
    }
}
