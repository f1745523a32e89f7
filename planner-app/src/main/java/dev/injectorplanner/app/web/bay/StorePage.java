package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.web.office.Turned;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.reports.bay.LabelForm;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The storeman's page: injectors in, with serial and code; kits of the visits to come; the stock. */
@Controller
class StorePage {
    private static final int NOT_KEPT = 422;

    private final BayDesk desk;
    private final SerialisedStock shelf;
    private final Kits kits;

    StorePage(BayDesk desk, SerialisedStock shelf, Kits kits) {
        this.desk = desk;
        this.shelf = shelf;
        this.kits = kits;
    }

    @GetMapping("/store")
    String store(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String asked,
            @RequestParam(name = "in", defaultValue = "0") int in,
            @RequestParam(name = "lacking", defaultValue = "0") int lacking,
            @RequestParam(name = "numbered", defaultValue = "0") int numbered,
            @RequestParam(name = "order", defaultValue = "") String order,
            @RequestParam(name = "part", defaultValue = "") String part,
            Model model) {
        model.addAttribute("numbered", numbered);
        model.addAttribute("in", in);
        model.addAttribute("lacking", lacking);
        return show(viewer, asked, new FormState(Map.of("order", List.of(order), "part", List.of(part))), model);
    }

    @PostMapping("/store/receiving")
    String receive(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        FormState typed = StoreView.withoutBlankLines(new FormState(sent));
        String depot = depot(viewer, typed);
        Origin origin = typed.has("origin", "NEW") ? Origin.NEW : Origin.REMAN;
        try {
            GoodsIn box = new GoodsIn(
                    depot,
                    typed.text("part"),
                    origin,
                    StoreView.units(typed),
                    typed.text("order"),
                    typed.has("counted", "yes"));
            int in = shelf.receive(box, desk.clock().now(), viewer.name());
            desk.changed();
            return back(depot) + (box.counted() ? "&numbered=" : "&in=") + in;
        } catch (RefusedEntryException e) {
            return refused(viewer, depot, typed, e, response, model);
        }
    }

    /** One of: {@code fill} a truck's kit, {@code bind} an injector, {@code release} it, take it {@code off} the stock. */
    @PostMapping("/store/kits")
    String kit(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam MultiValueMap<String, String> sent,
            HttpServletResponse response,
            Model model) {
        FormState typed = new FormState(sent);
        String depot = depot(viewer, typed);
        try {
            int lacking = act(viewer, typed, depot);
            desk.changed();
            return back(depot) + (lacking > 0 ? "&lacking=" + lacking : "");
        } catch (RefusedEntryException e) {
            return refused(viewer, depot, typed, e, response, model);
        }
    }

    private int act(Viewer viewer, FormState typed, String depot) {
        var now = desk.clock().now();
        String truck = typed.text("truck");
        if (typed.has("do", "fill")) {
            return kits.fill(depot, truck, now, viewer.name());
        }
        long injector = StoreView.number(typed.text("injector"));
        switch (typed.text("do")) {
            case "bind" ->
                kits.bind(depot, injector, truck, (int) StoreView.number(typed.text("cylinder")), now, viewer.name());
            case "release" -> kits.release(depot, injector, now, viewer.name());
            case "off" -> shelf.takeOff(depot, injector, typed.text("why"), now, viewer.name());
            default -> throw BayDesk.notThere();
        }
        return 0;
    }

    private String depot(Viewer viewer, FormState typed) {
        return desk.chosen(viewer, typed.text("depot")).map(Depot::depot).orElseThrow(BayDesk::notThere);
    }

    private static String back(String depot) {
        return "redirect:/store?depot=" + BayAddresses.query(depot);
    }

    private String refused(
            Viewer viewer,
            String depot,
            FormState typed,
            RefusedEntryException e,
            HttpServletResponse response,
            Model model) {
        for (EntryProblem problem : e.problems()) {
            typed.wrong(problem);
        }
        model.addAttribute("in", 0);
        model.addAttribute("lacking", 0);
        model.addAttribute("numbered", 0);
        response.setStatus(NOT_KEPT);
        return show(viewer, depot, typed, model);
    }

    private String show(Viewer viewer, String asked, FormState typed, Model model) {
        model.addAttribute("depots", desk.depots(viewer));
        model.addAttribute("form", typed);
        model.addAttribute("turned", Turned.of("/store", Map.of("depot", new String[] {asked})));
        model.addAttribute("forms", LabelForm.values());
        model.addAttribute("mayChange", viewer.is(Role.MANAGER, Role.BUYER, Role.STOREMAN, Role.MECHANIC));
        model.addAttribute(
                "view",
                desk.chosen(viewer, asked)
                        .flatMap(depot -> StoreView.of(desk, shelf, depot.depot()))
                        .orElse(null));
        return "store";
    }
}
