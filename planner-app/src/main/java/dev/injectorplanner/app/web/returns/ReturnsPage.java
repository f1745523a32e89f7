package dev.injectorplanner.app.web.returns;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.returns.Returns;
import dev.injectorplanner.app.returns.Unit;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.app.web.order.OrderFields;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.fleet.UnitReturn.What;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Cores and claims as a working list: due soon first, several shipped with one note, answers recorded. */
@Controller
public class ReturnsPage {
    private static final Role[] SHIPPERS = {Role.MANAGER, Role.BUYER, Role.STOREMAN};

    private final Office office;
    private final Returns returns;
    private final Replanning replanning;
    private final SiteClock clock;

    ReturnsPage(Office office, Application application, Replanning replanning, SiteClock clock) {
        this.office = office;
        this.returns = new Returns(application.store());
        this.replanning = replanning;
        this.clock = clock;
    }

    @GetMapping("/returns")
    String list(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "said", defaultValue = "") String said,
            @RequestParam(name = "number", defaultValue = "") String number,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        model.addAttribute("view", ReturnsView.of(chosen, returns.list()));
        model.addAttribute("said", said);
        model.addAttribute("number", number);
        model.addAttribute("mayShip", viewer.is(SHIPPERS));
        model.addAttribute("maySettle", viewer.is(Role.MANAGER, Role.BUYER));
        model.addAttribute("mayBook", viewer.is(Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR));
        return "returns";
    }

    /** Ships the cores ticked with one return note. */
    @PostMapping("/returns/ship")
    String ship(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, SHIPPERS);
        OrderFields form = new OrderFields(sent);
        List<Unit> units = new ArrayList<>();
        List<String> depots = new ArrayList<>();
        for (String each : form.all("unit")) {
            Unit unit = unit(each);
            depots.add(depotOf(viewer, unit));
            units.add(unit);
        }
        String day = depots.isEmpty() ? "" : depots.get(0);
        String note = returns.ship(form.text("key"), units, today(day), clock.now(), viewer.name());
        follow(viewer, form.text("key"), depots);
        return "redirect:/returns?said=shipped&number=" + note;
    }

    /** Sends a warranty claim. */
    @PostMapping("/returns/claim")
    String claim(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        Unit unit = unit(form.text("unit"));
        String depot = depotOf(viewer, unit);
        String number =
                returns.claim(form.text("key"), unit, form.money("amount"), today(depot), clock.now(), viewer.name());
        follow(viewer, form.text("key"), List.of(depot));
        return "redirect:/returns?said=claimed&number=" + number;
    }

    /**
     * The supplier's answer: {@code settle} one unit, credit {@code all} of a note in full; or {@code back}, the shipment is
     * taken back.
     */
    @PostMapping("/returns/answer")
    String answer(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        OrderFields form = new OrderFields(sent);
        String key = form.text("key") + " " + form.text("do");
        if (form.text("do").equals("back")) {
            Permissions.require(viewer, SHIPPERS);
        } else {
            Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        }
        List<String> depots = new ArrayList<>();
        String document = form.text("document");
        if (form.text("do").equals("settle")) {
            Unit unit = unit(form.text("unit"));
            depots.add(depotOf(viewer, unit));
            returns.settle(
                    key,
                    form.constant(What.class, "what"),
                    unit,
                    form.day("day"),
                    form.money("credit"),
                    form.text("reason"),
                    clock.now(),
                    viewer.name());
        } else {
            depots.addAll(depotsOf(viewer, document));
            if (form.text("do").equals("all")) {
                returns.creditAll(key, document, form.day("day"), clock.now(), viewer.name());
            } else if (form.text("do").equals("back")) {
                if (isClaim(document)) {
                    Permissions.require(viewer, Role.MANAGER, Role.BUYER);
                }
                returns.takeBack(key, document, clock.now(), viewer.name());
            } else {
                throw new NotHereException("There is no such button. Fix: open the cores and claims again.");
            }
        }
        follow(viewer, key, depots);
        return "redirect:/returns?said=" + form.text("do") + "&number="
                + java.net.URLEncoder.encode(document, java.nio.charset.StandardCharsets.UTF_8);
    }

    private boolean isClaim(String document) {
        return returns.list().stream().anyMatch(row -> row.document().equals(document) && row.what() == What.CLAIM);
    }

    private List<String> depotsOf(Viewer viewer, String document) {
        List<UnitReturn> rows = returns.list().stream()
                .filter(row -> row.document().equals(document))
                .toList();
        if (rows.isEmpty()) {
            throw new NotHereException(
                    "There is no return note or claim \"" + document + "\". Fix: open the cores and claims again.");
        }
        return rows.stream()
                .map(row -> depotOf(viewer, new Unit(row.truck(), row.cylinder(), row.fittedOn(), row.fitting())))
                .distinct()
                .toList();
    }

    static Unit unit(String sent) {
        String[] cells = sent.split("\t", 4);
        try {
            if (cells.length == 4) {
                return new Unit(
                        cells[3], Integer.parseInt(cells[0]), LocalDate.parse(cells[1]), Integer.parseInt(cells[2]));
            }
        } catch (NumberFormatException | DateTimeParseException e) {
            throw new InvalidValueException("unit", sent, "is damaged", "open the cores and claims again");
        }
        throw new InvalidValueException("unit", sent, "is damaged", "open the cores and claims again");
    }

    private String depotOf(Viewer viewer, Unit unit) {
        return office.findDepotOf(viewer, unit.truck())
                .orElseThrow(() -> new NotHereException(
                        "There is no truck \"" + unit.truck() + "\" for you. Fix: open the cores and claims again."));
    }

    private LocalDate today(String depot) {
        return office.find(depot).map(DepotPlan::today).orElseGet(() -> clock.today(ZoneOffset.UTC));
    }

    private void follow(Viewer viewer, String key, List<String> depots) {
        office.changed();
        for (String depot : depots.stream().distinct().sorted().toList()) {
            if (office.find(depot).isPresent()) {
                replanning.plan(viewer, depot, "returns " + key + " " + depot);
            }
        }
    }
}
