package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.order.Deliveries;
import dev.injectorplanner.app.order.DeliveryProblem;
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
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
    private final Deliveries deliveries;
    private final OrderPapers papers;
    private final Replanning replanning;
    private final SiteClock clock;

    OrdersPage(Office office, Application application, Replanning replanning, OrderPapers papers, SiteClock clock) {
        this.office = office;
        this.orders = new PurchaseOrders(application.store());
        this.transfers = new Transfers(application.store());
        this.deliveries = new Deliveries(application.store());
        this.papers = papers;
        this.replanning = replanning;
        this.clock = clock;
    }

    /** An open order as it is shown. */
    record Row(
            String order,
            String supplier,
            String depots,
            String lines,
            String open,
            String value,
            String expected,
            String state,
            String mark) {}

    @GetMapping("/orders")
    String orders(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "placed", defaultValue = "") String placed,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        Map<String, Part> parts = papers.parts();
        Map<String, List<PurchaseLine>> byOrder = orders.open().stream()
                .filter(line -> viewer.sees(line.depot()))
                .filter(line -> chosen.depot() == null || line.depot().equals(chosen.depot()))
                .collect(Collectors.groupingBy(PurchaseLine::order, LinkedHashMap::new, Collectors.toList()));
        List<Row> rows = byOrder.entrySet().stream()
                .map(each -> row(each.getKey(), each.getValue(), parts))
                .toList();
        List<OrderFileView.ProblemRow> problems = deliveries.list().stream()
                .filter(problem -> viewer.sees(problem.ref().depot()))
                .filter(problem ->
                        chosen.depot() == null || problem.ref().depot().equals(chosen.depot()))
                .map(OrderFileView::problem)
                .toList();
        model.addAttribute("chosen", chosen);
        model.addAttribute("placed", placed);
        model.addAttribute("rows", rows);
        model.addAttribute("value", DisplayFormat.cents(value(byOrder.values(), parts)));
        model.addAttribute(
                "today",
                byOrder.values().stream()
                        .flatMap(List::stream)
                        .filter(line -> !line.expectedOn().isAfter(today(line.depot())))
                        .map(PurchaseLine::order)
                        .distinct()
                        .count());
        model.addAttribute("problems", problems);
        model.addAttribute("mayChange", viewer.is(Role.MANAGER, Role.BUYER));
        return "orders";
    }

    private static BigDecimal value(Collection<List<PurchaseLine>> orders, Map<String, Part> parts) {
        return orders.stream()
                .flatMap(List::stream)
                .map(line -> {
                    Part part = parts.get(line.part());
                    BigDecimal confirmed = line.price();
                    BigDecimal price = confirmed != null ? confirmed : part == null ? BigDecimal.ZERO : part.price();
                    return price.multiply(BigDecimal.valueOf(line.openQuantity()));
                })
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private Row row(String order, List<PurchaseLine> lines, Map<String, Part> parts) {
        LocalDate expected = OrderPapers.expected(lines);
        PurchaseLine first = lines.get(0);
        long late = ChronoUnit.DAYS.between(expected, today(first.depot()));
        boolean confirmed = lines.stream().allMatch(line -> line.confirmedOn() != null);
        boolean some = lines.stream().anyMatch(line -> line.received() > 0);
        return new Row(
                order,
                PurchaseLine.isTransfer(order) ? "between depots" : OrderPapers.supplier(parts, first),
                lines.stream().map(PurchaseLine::depot).distinct().collect(Collectors.joining(", ")),
                lines.stream()
                        .map(line -> Require.plain(line.openQuantity()) + " " + line.part())
                        .collect(Collectors.joining(", ")),
                Require.plain(
                        lines.stream().mapToDouble(PurchaseLine::openQuantity).sum()),
                DisplayFormat.cents(value(List.of(lines), parts)),
                DisplayFormat.shortDate(expected),
                late > 0
                        ? late + (late == 1 ? " day late" : " days late")
                        : (some ? "part received, " : "") + (confirmed ? "confirmed" : "ordered"),
                late > 0 ? "care" : confirmed ? "told" : "plan");
    }

    /** One press makes an order of the lines ticked. */
    @PostMapping("/orders/place")
    String place(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent)
            throws IOException {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        List<NewLine> lines = new ArrayList<>();
        for (String number : form.all("line")) {
            String depot = form.text("depot" + number);
            require(viewer, depot);
            lines.add(new NewLine(
                    form.text("part" + number), depot, form.number("quantity" + number), form.day("due" + number)));
        }
        LocalDate day = lines.isEmpty()
                ? clock.today(ZoneOffset.UTC)
                : today(lines.get(0).depot());
        String order = orders.place(
                form.text("key"), form.text("supplier"), lines, form.text("note"), day, clock.now(), viewer.name());
        papers.mailIfWanted(order, orders.file(order), clock.now(), viewer.name());
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

    /**
     * One of: {@code confirm} a line, {@code split} it, {@code receive} against it, record a {@code problem} with what came,
     * {@code cancel} it.
     */
    @PostMapping("/orders/line")
    String line(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        OrderFields form = new OrderFields(sent);
        boolean atTheDoor = Set.of("receive", "problem").contains(form.text("do"));
        if (atTheDoor) {
            Permissions.require(viewer, Role.MANAGER, Role.BUYER, Role.STOREMAN);
        } else {
            Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        }
        OrderRef ref = new OrderRef(form.text("order"), form.text("part"), form.text("depot"));
        require(viewer, ref.depot());
        String key = form.text("key") + " " + form.text("do");
        act(form, ref, key, viewer.name());
        follow(viewer, key, List.of(ref.depot()));
        return "redirect:/orders/" + ref.order();
    }

    private void act(OrderFields form, OrderRef ref, String key, String by) {
        LocalDate today = today(ref.depot());
        switch (form.text("do")) {
            case "confirm" ->
                orders.confirm(
                        key, ref, form.day("day"), form.number("quantity"), form.findMoney("price"), clock.now(), by);
            case "split" -> orders.split(key, ref, form.number("pieces"), form.day("day"), today, clock.now(), by);
            case "receive" -> orders.receive(key, ref, form.number("pieces"), today, clock.now(), by);
            case "problem" -> deliveries.record(key, found(form, ref), today, clock.now(), by);
            case "cancel" -> orders.cancel(key, ref, form.text("why"), today, clock.now(), by);
            default -> throw new NotHereException("There is no such button. Fix: open the orders again.");
        }
    }

    private static Deliveries.Found found(OrderFields form, OrderRef ref) {
        boolean replace = form.text("answer").equals("REPLACE");
        return new Deliveries.Found(
                ref,
                form.constant(DeliveryProblem.Kind.class, "kind"),
                form.number("pieces"),
                form.text("words"),
                replace ? DeliveryProblem.Answer.REPLACE : DeliveryProblem.Answer.CLAIM,
                replace ? form.day("day") : null,
                !form.all("instock").isEmpty(),
                form.words("serials"));
    }

    /** A claim of a delivery: {@code send} it, or {@code settle} it with the supplier's answer. */
    @PostMapping("/orders/claims")
    String claim(@ModelAttribute("viewer") Viewer viewer, @RequestParam MultiValueMap<String, String> sent) {
        Permissions.require(viewer, Role.MANAGER, Role.BUYER);
        OrderFields form = new OrderFields(sent);
        String number = form.text("number");
        String depot = deliveries.list().stream()
                .filter(problem -> problem.number().equals(number))
                .map(problem -> problem.ref().depot())
                .findFirst()
                .orElse("");
        require(viewer, depot);
        String key = form.text("key") + " " + form.text("do");
        switch (form.text("do")) {
            case "send" -> deliveries.send(key, number, today(depot), clock.now(), viewer.name());
            case "settle" ->
                deliveries.settle(
                        key,
                        number,
                        form.day("day"),
                        form.money("credit"),
                        form.text("reason"),
                        clock.now(),
                        viewer.name());
            default -> throw new NotHereException("There is no such button. Fix: open the orders again.");
        }
        return "redirect:/orders";
    }

    private static void require(Viewer viewer, String depot) {
        if (!viewer.sees(depot)) {
            throw new NotHereException("There is no depot \"" + depot + "\" for you. Fix: choose one of yours.");
        }
    }

    /** The day of a depot's plan, which in the demo stands still; else today there. */
    static LocalDate today(Office office, SiteClock clock, String depot) {
        return office.find(depot).map(DepotPlan::today).orElseGet(() -> clock.today(ZoneOffset.UTC));
    }

    private LocalDate today(String depot) {
        return today(office, clock, depot);
    }

    private void follow(Viewer viewer, String key, List<String> depots) {
        for (String depot : depots.stream().distinct().sorted().toList()) {
            if (office.find(depot).isPresent()) {
                replanning.plan(viewer, depot, "orders " + key + " " + depot);
            }
        }
    }
}
