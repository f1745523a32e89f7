package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.app.order.OrderRef;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.order.Transfers;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Orders that are open: placed, confirmed, received in parts, cancelled. The plan follows each change. */
@Controller
public class OrdersPage {
    private final Office office;
    private final PurchaseOrders orders;
    private final Transfers transfers;
    private final Replanning replanning;
    private final SiteClock clock;

    OrdersPage(Office office, Application application, Replanning replanning, SiteClock clock) {
        this.office = office;
        this.orders = new PurchaseOrders(application.store());
        this.transfers = new Transfers(application.store());
        this.replanning = replanning;
        this.clock = clock;
    }

    /** An open line as it is shown. */
    record Row(
            String key,
            String order,
            String part,
            String depot,
            String quantity,
            String received,
            String open,
            String expected,
            String expectedOn,
            String price,
            String state) {}

    @GetMapping("/orders")
    String orders(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "placed", defaultValue = "") String placed,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        List<Row> rows = orders.open().stream()
                .filter(line -> viewer.sees(line.depot()))
                .filter(line -> chosen.depot() == null || line.depot().equals(chosen.depot()))
                .map(line -> row(line, today(line.depot())))
                .toList();
        model.addAttribute("chosen", chosen);
        model.addAttribute("placed", placed);
        model.addAttribute("rows", rows);
        model.addAttribute("mayChange", viewer.is(Role.MANAGER, Role.BUYER));
        return "orders";
    }

    private static Row row(PurchaseLine line, LocalDate today) {
        long late = ChronoUnit.DAYS.between(line.expectedOn(), today);
        return new Row(
                UUID.randomUUID().toString(),
                line.order(),
                line.part(),
                line.depot(),
                Require.plain(line.quantity()),
                Require.plain(line.received()),
                Require.plain(line.openQuantity()),
                DisplayFormat.shortDate(line.expectedOn()),
                line.expectedOn().toString(),
                line.price() == null ? "" : line.price().toPlainString(),
                late > 0
                        ? late + (late == 1 ? " day late" : " days late")
                        : line.confirmedOn() == null ? "ordered" : "confirmed");
    }

    /** One press makes an order of the lines ticked. */
    @PostMapping("/orders/place")
    String place(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        List<NewLine> lines = new ArrayList<>();
        for (String number : form.all("line")) {
            String depot = form.text("depot" + number);
            require(viewer, depot);
            lines.add(new NewLine(
                    form.text("part" + number), depot, form.number("quantity" + number), form.day("due" + number)));
        }
        String order = orders.place(form.text("key"), form.text("supplier"), lines, clock.now(), viewer.name());
        follow(viewer, form.text("key"), lines.stream().map(NewLine::depot).toList());
        return "redirect:/orders?placed=" + order;
    }

    /** Accepts a transfer that the plan proposes. */
    @PostMapping("/orders/transfer")
    String transfer(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        Permissions.requireAllDepots(viewer, "Transfers");
        OrderFields form = new OrderFields(sent);
        Map<String, Double> pieces = new TreeMap<>();
        for (String each : form.all("pieces")) {
            String[] cells = each.split("\t", 2);
            pieces.put(cells[0], OrderFields.number("pieces", cells.length < 2 ? "" : cells[1]));
        }
        String order = transfers.send(
                form.text("key"),
                form.text("from"),
                form.text("to"),
                pieces,
                form.day("arrives"),
                clock.now(),
                viewer.name());
        follow(viewer, form.text("key"), List.of(form.text("from"), form.text("to")));
        return "redirect:/orders?placed=" + order;
    }

    /** One of: {@code confirm} a line, {@code receive} against it, {@code cancel} it. */
    @PostMapping("/orders/line")
    String line(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        OrderRef ref = new OrderRef(form.text("order"), form.text("part"), form.text("depot"));
        require(viewer, ref.depot());
        String key = form.text("key") + " " + form.text("do");
        switch (form.text("do")) {
            case "confirm" ->
                orders.confirm(
                        key,
                        ref,
                        form.day("day"),
                        form.number("quantity"),
                        form.findMoney("price"),
                        clock.now(),
                        viewer.name());
            case "receive" ->
                orders.receive(key, ref, form.number("pieces"), today(ref.depot()), clock.now(), viewer.name());
            case "cancel" -> orders.cancel(key, ref, form.text("why"), today(ref.depot()), clock.now(), viewer.name());
            default -> throw new NotHereException("There is no such button. Fix: open the orders again.");
        }
        follow(viewer, key, List.of(ref.depot()));
        return "redirect:/orders";
    }

    private static void require(Viewer viewer, String depot) {
        if (!viewer.sees(depot)) {
            throw new NotHereException("There is no depot \"" + depot + "\" for you. Fix: choose one of yours.");
        }
    }

    /** The day of a depot's plan, which in the demo stands still; else today there. */
    private LocalDate today(String depot) {
        return office.find(depot).map(DepotPlan::today).orElseGet(() -> clock.today(java.time.ZoneOffset.UTC));
    }

    private void follow(Viewer viewer, String key, List<String> depots) {
        for (String depot : depots.stream().distinct().sorted().toList()) {
            if (office.find(depot).isPresent()) {
                replanning.plan(viewer, depot, "orders " + key + " " + depot);
            }
        }
    }
}
