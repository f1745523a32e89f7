package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.core.units.SiteUnits;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A truck's bay sheet with its close-out, on a phone. */
@Controller
class BaySheetPage {
    /** What was typed could not be kept as it is. */
    private static final int NOT_KEPT = 422;

    private final BayDesk desk;
    private final CloseOuts closeOuts;

    BaySheetPage(BayDesk desk, CloseOuts closeOuts) {
        this.desk = desk;
        this.closeOuts = closeOuts;
    }

    @GetMapping("/bay/{truck}")
    String sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "saved", defaultValue = "") String saved,
            @RequestParam(name = "more", defaultValue = "false") boolean more,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        model.addAttribute("saved", saved);
        model.addAttribute("more", more);
        if (at.done() != null && !more) {
            model.addAttribute("record", DoneRecord.of(at, at.done()));
        }
        return show(at, CloseOutForm.blank(at), model);
    }

    /** Keeps a close-out; with {@code check} it only says what is wrong so far. Either way all that was typed stays. */
    @PostMapping("/bay/{truck}")
    String close(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        FormState typed = new FormState(sent);
        SiteUnits units = CloseOutForm.unitsOf(typed, at.units());
        CloseOutEntry entry = new EntryReader(at, typed).read();
        Instant now = desk.clock().now();
        boolean only = typed.has("do", "check");
        if (only || !typed.allWrong().isEmpty()) {
            closeOuts.check(entry, now, at.today()).forEach(problem -> typed.wrong(problem, units));
        } else {
            try {
                CloseOuts.Saved saved = closeOuts.close(entry, now, viewer.name(), at.today());
                desk.changed();
                return "redirect:" + BayAddresses.bay(name) + "?saved=" + (saved.again() ? "before" : "now");
            } catch (RefusedEntryException e) {
                e.problems().forEach(problem -> typed.wrong(problem, units));
            }
        }
        model.addAttribute("again", true);
        model.addAttribute("checkedOnly", only);
        model.addAttribute("more", at.done() != null);
        response.setStatus(only && typed.allWrong().isEmpty() ? HttpServletResponse.SC_OK : NOT_KEPT);
        return show(at, typed, model);
    }

    private static String show(TruckInBay at, FormState typed, Model model) {
        model.addAttribute("at", at);
        model.addAttribute("sheet", at.sheet());
        model.addAttribute("form", typed);
        model.addAttribute("cylinders", CloseOutForm.cylinders(at));
        model.addAttribute(
                "distanceUnit", CloseOutForm.unitsOf(typed, at.units()).distanceUnit());
        model.addAttribute("parts", CloseOutForm.parts(at, typed));
        model.addAttribute("tasks", at.visit() == null ? List.of() : at.visit().tasks());
        model.addAttribute("action", BayAddresses.bay(at.truck().truck()));
        model.addAttribute("correcting", null);
        return "bay-sheet";
    }
}
