package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.photo.Photos;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.Paper;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A truck's bay sheet with its close-out, on a phone. */
@Controller
class BaySheetPage {
    /** What was typed could not be kept as it is. */
    private static final int NOT_KEPT = 422;

    private final BayDesk desk;
    private final CloseOuts closeOuts;
    private final Kits kits;
    private final Photos photos;
    private final PhotoVisit visits;

    BaySheetPage(BayDesk desk, CloseOuts closeOuts, Kits kits, Application application) {
        this.photos = new Photos(application.store());
        this.visits = new PhotoVisit(new BayJobs(application.store()));
        this.desk = desk;
        this.kits = kits;
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
        boolean open = at.done() == null || more;
        if (open && model.getAttribute("swapped") instanceof Swapped swapped) {
            return show(at, SheetShown.again(swapped.typed(), more).saying(swapped.words()), model);
        }
        return show(at, SheetShown.first(CloseOutForm.blank(at), more, saved), model);
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
        response.setStatus(only && typed.allWrong().isEmpty() ? HttpServletResponse.SC_OK : NOT_KEPT);
        SheetShown again = SheetShown.again(typed, at.done() != null);
        return show(at, only ? again.checked() : again, model);
    }

    /** Two injectors of the kit lie in each other's cylinder: the kit is put right, and both codes are asked for again. */
    @PostMapping("/bay/{truck}/swap")
    String swap(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam MultiValueMap<String, String> sent,
            RedirectAttributes next,
            HttpServletResponse response,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        FormState typed = new FormState(sent);
        try {
            int[] pair = pair(typed);
            kits.changeOver(
                    at.depot().depot(),
                    name,
                    new Kits.Seen(pair[0], typed.text("kit." + pair[0])),
                    new Kits.Seen(pair[1], typed.text("kit." + pair[1])),
                    desk.clock().now(),
                    viewer.name());
            desk.changed();
            Swaps.change(desk.truck(viewer, name), typed, pair[0], pair[1]);
            next.addFlashAttribute("swapped", new Swapped(typed, pair[0], pair[1]));
            return "redirect:" + BayAddresses.bay(name);
        } catch (RefusedEntryException e) {
            e.problems().forEach(typed::wrong);
            response.setStatus(NOT_KEPT);
        }
        return show(at, SheetShown.again(typed, false), model);
    }

    /** The form after a swap, carried over the redirect. */
    private record Swapped(FormState typed, int first, int second) {
        String words() {
            return "Corrected: cylinders " + first + " and " + second
                    + " are swapped. Enter both codes in the ECU again under their cylinders, and read them back.";
        }
    }

    /** The same of a job that is closed out already: its record is corrected. */
    @PostMapping("/bay/{truck}/changed-over")
    String changedOver(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        FormState typed = new FormState(sent);
        CloseOut kept = version(name, typed).orElseThrow(BayDesk::notThere);
        try {
            int[] pair = pair(typed);
            if (!typed.has("coded", "yes")) {
                throw RefusedEntryException.of(
                        "coded",
                        "the codes are not confirmed as entered again",
                        "enter both in the ECU under their cylinders, read them back, and tick it");
            }
            closeOuts.changeOver(kept, pair[0], pair[1], desk.clock().now(), viewer.name(), at.today());
            desk.changed();
            return "redirect:" + BayAddresses.bay(name);
        } catch (RefusedEntryException e) {
            response.setStatus(NOT_KEPT);
            SheetShown shown = SheetShown.first(CloseOutForm.blank(at), false, "");
            return show(at, shown.refusing(e.problems().get(0).words()), model);
        }
    }

    /** The version that the page showed: another that took its place is not changed instead. */
    private Optional<CloseOut> version(String truck, FormState typed) {
        return Optional.of(typed.text("version"))
                .filter(text -> text.matches("\\d{1,18}"))
                .flatMap(text -> closeOuts.find(Long.parseLong(text)))
                .filter(row -> row.truck().equals(truck));
    }

    private static int[] pair(FormState typed) {
        String[] both = (typed.text("swap") + typed.text("first") + " " + typed.text("second"))
                .strip()
                .split(" ");
        if (both.length != 2
                || !both[0].matches("\\d{1,2}")
                || !both[1].matches("\\d{1,2}")
                || both[0].equals(both[1])) {
            throw RefusedEntryException.of("swap", "two cylinders are needed", "choose two that were changed over");
        }
        return new int[] {Integer.parseInt(both[0]), Integer.parseInt(both[1])};
    }

    private String show(TruckInBay at, SheetShown shown, Model model) {
        SheetModel.fill(at, shown.typed(), model);
        shown.into(at, model);
        String truck = at.truck().truck();
        model.addAttribute("photos", photos.ofVisit(truck, visits.of(at, photos.ofTruck(truck))));
        model.addAttribute("photoKey", UUID.randomUUID());
        model.addAttribute("tasks", at.visit() == null ? List.of() : at.visit().tasks());
        model.addAttribute("action", BayAddresses.bay(at.truck().truck()));
        model.addAttribute("correcting", null);
        BaySheet sheet = at.sheet();
        if (sheet != null && at.done() == null) {
            model.addAttribute("paper", Paper.html(sheet));
        }
        return "bay-sheet";
    }
}
