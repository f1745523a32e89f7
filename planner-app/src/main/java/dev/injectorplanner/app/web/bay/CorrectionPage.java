package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.core.units.SiteUnits;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;

/** Close-outs as they were kept, every version; manager and administrator correct the one that holds. */
@Controller
class CorrectionPage {
    private static final int NOT_KEPT = 422;

    private final BayDesk desk;
    private final CloseOuts closeOuts;

    CorrectionPage(BayDesk desk, CloseOuts closeOuts) {
        this.desk = desk;
        this.closeOuts = closeOuts;
    }

    static boolean mayCorrect(Viewer viewer) {
        return viewer.is(Role.MANAGER, Role.ADMINISTRATOR);
    }

    @GetMapping("/bay/{truck}/close-outs")
    String list(@ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name, Model model) {
        TruckInBay at = desk.truck(viewer, name);
        model.addAttribute("at", at);
        model.addAttribute(
                "records",
                closeOuts.ofTruck(name).stream()
                        .map(row -> DoneRecord.of(at, row))
                        .toList());
        model.addAttribute("mayCorrect", mayCorrect(viewer));
        return "close-outs";
    }

    @GetMapping("/bay/{truck}/close-outs/{id}")
    String form(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @PathVariable("id") long id,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        CloseOut kept = kept(viewer, name, id);
        return show(at, kept, CloseOutForm.of(at, kept), model);
    }

    @PostMapping("/bay/{truck}/close-outs/{id}")
    String correct(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @PathVariable("id") long id,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        CloseOut kept = kept(viewer, name, id);
        FormState typed = new FormState(sent);
        SiteUnits units = CloseOutForm.unitsOf(typed, at.units());
        CloseOutEntry entry = new EntryReader(at, typed, kept).read();
        boolean only = typed.has("do", "check");
        if (!only && typed.allWrong().isEmpty()) {
            try {
                closeOuts.correct(id, entry, typed.text("why"), desk.clock().now(), viewer.name(), at.today());
                desk.changed();
                return "redirect:" + BayAddresses.bay(name) + "/close-outs";
            } catch (RefusedEntryException e) {
                e.problems().forEach(problem -> typed.wrong(problem, units));
            }
        }
        if (only && typed.allWrong().isEmpty()) {
            typed.wrong(new EntryProblem("why", "Nothing was saved yet. Fix: press the button at the end to save."));
        }
        model.addAttribute("again", true);
        response.setStatus(NOT_KEPT);
        return show(at, kept, typed, model);
    }

    @PostMapping("/bay/{truck}/close-outs/{id}/void")
    String voidIt(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @PathVariable("id") long id,
            @RequestParam(name = "why", defaultValue = "") String why,
            HttpServletResponse response,
            Model model) {
        desk.truck(viewer, name);
        kept(viewer, name, id);
        try {
            closeOuts.voidIt(id, name, why, desk.clock().now(), viewer.name());
            desk.changed();
            return "redirect:" + BayAddresses.bay(name) + "/close-outs";
        } catch (RefusedEntryException e) {
            model.addAttribute("voiding", id);
            model.addAttribute("why", why);
            model.addAttribute("wrong", e.problems().get(0).words());
            response.setStatus(NOT_KEPT);
            return list(viewer, name, model);
        }
    }

    private CloseOut kept(Viewer viewer, String truck, long id) {
        if (!mayCorrect(viewer)) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        return closeOuts
                .find(id)
                .filter(row -> row.truck().equals(truck) && row.holds())
                .orElseThrow(BayDesk::notThere);
    }

    private static String show(TruckInBay at, CloseOut kept, FormState typed, Model model) {
        SheetModel.fill(at, typed, model);
        model.addAttribute("tasks", kept.tasks());
        model.addAttribute("action", BayAddresses.bay(at.truck().truck()) + "/close-outs/" + kept.id());
        model.addAttribute("correcting", kept);
        return "close-out-correct";
    }
}
