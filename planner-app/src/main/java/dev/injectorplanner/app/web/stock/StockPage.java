package dev.injectorplanner.app.web.stock;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.entry.EntryProblems;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.stock.StockMovements;
import dev.injectorplanner.app.stock.Stocktakes;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.app.web.order.OrderFields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Stock: every part with what is there, one part week by week with its movements, and the stocktake. */
@Controller
public class StockPage {
    private static final Role[] COUNTERS = {Role.MANAGER, Role.BUYER, Role.STOREMAN};
    private static final int MOST_MOVEMENTS = 60;

    private final Office office;
    private final StockMovements movements;
    private final Stocktakes stocktakes;
    private final Replanning replanning;
    private final SiteClock clock;

    StockPage(Office office, Application application, Replanning replanning, SiteClock clock) {
        this.office = office;
        this.movements = new StockMovements(application.store());
        this.stocktakes = new Stocktakes(application.store());
        this.replanning = replanning;
        this.clock = clock;
    }

    @GetMapping("/stock")
    String stock(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "counted", defaultValue = "") String counted,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        List<StockView.Taken> taken = new ArrayList<>();
        chosen.plans()
                .forEach(plan -> stocktakes
                        .list(plan.depot(), 3)
                        .forEach(posted -> taken.add(StockView.taken(plan.depot(), posted))));
        model.addAttribute("view", StockView.of(chosen));
        model.addAttribute("taken", taken);
        model.addAttribute("counted", counted);
        model.addAttribute("mayCount", viewer.is(COUNTERS));
        return "stock";
    }

    @GetMapping("/stock/part")
    String part(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("part") String part,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute(
                "view",
                StockView.part(
                        chosen, part, each -> movements.list(each.depot(), part, MOST_MOVEMENTS), MOST_MOVEMENTS));
        return "stock-part";
    }

    @GetMapping("/stock/count")
    String count(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        Permissions.require(viewer, COUNTERS);
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        DepotPlan plan = chosen.plans().get(0);
        model.addAttribute("depot", plan.depot());
        model.addAttribute("key", UUID.randomUUID().toString());
        model.addAttribute("rows", StockView.countRows(plan));
        model.addAttribute("problems", List.of());
        return "stock-count";
    }

    /** Posts a stocktake: parts with a count, the others are left as they are. */
    @PostMapping("/stock/count")
    String post(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam MultiValueMap<String, String> sent,
            jakarta.servlet.http.HttpServletResponse response,
            Model model) {
        Permissions.require(viewer, COUNTERS);
        OrderFields form = new OrderFields(sent);
        String depot = form.text("depot");
        DepotPlan plan = office.find(depot)
                .filter(each -> viewer.sees(depot))
                .orElseThrow(() ->
                        new NotHereException("There is no depot \"" + depot + "\" for you. Fix: choose one of yours."));
        Map<String, StockView.Typed> typed = typed(form);
        try {
            String number =
                    stocktakes.post(form.text("key"), depot, counts(typed), plan.today(), clock.now(), viewer.name());
            replanning.plan(viewer, depot, "stocktake " + form.text("key"));
            return "redirect:/stock?depot=" + java.net.URLEncoder.encode(depot, java.nio.charset.StandardCharsets.UTF_8)
                    + "&counted=" + number;
        } catch (RefusedEntryException e) {
            response.setStatus(422);
            model.addAttribute("chosen", office.choose(viewer, depot));
            model.addAttribute("depot", depot);
            model.addAttribute("key", form.text("key"));
            model.addAttribute("rows", StockView.countRows(plan, typed));
            model.addAttribute("problems", e.problems());
            return "stock-count";
        }
    }

    private static Map<String, StockView.Typed> typed(OrderFields form) {
        Map<String, StockView.Typed> typed = new LinkedHashMap<>();
        List<String> parts = form.all("part");
        for (int i = 0; i < parts.size(); i++) {
            typed.put(
                    parts.get(i),
                    new StockView.Typed(form.text("expected" + i), form.text("counted" + i), form.text("reason" + i)));
        }
        return typed;
    }

    /** Rows with a count; one that cannot be read is said with the others, and what was typed stays on the page. */
    private static List<Stocktakes.Count> counts(Map<String, StockView.Typed> typed) {
        EntryProblems problems = new EntryProblems();
        List<Stocktakes.Count> counts = new ArrayList<>();
        typed.forEach((part, row) -> {
            if (!row.counted().isEmpty()) {
                Stocktakes.Count read = problems.guarded(
                        "counted." + part,
                        () -> new Stocktakes.Count(
                                part,
                                OrderFields.number(part + ", expected", row.expected()),
                                OrderFields.number(part + ", counted", row.counted()),
                                row.reason()));
                if (read != null) {
                    counts.add(read);
                }
            }
        });
        problems.throwIfAny();
        return counts;
    }
}
