package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.order.Deliveries;
import dev.injectorplanner.app.order.DeliveryProblem;
import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.app.order.OrderRef;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.order.Transfers;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.order.OrderPapers;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Orders over the API: placed, confirmed, split, received, cancelled; transfers; what came short, wrong or damaged. */
final class OrderRequests {
    static final Set<String> FIELDS = Set.of(
            "do",
            "supplier",
            "note",
            "lines",
            "order",
            "part",
            "depot",
            "day",
            "quantity",
            "price",
            "pieces",
            "why",
            "kind",
            "words",
            "answer",
            "in_stock",
            "serials",
            "units",
            "origin",
            "from",
            "to",
            "number",
            "credit",
            "reason");
    private static final Set<String> LINE = Set.of("part", "depot", "quantity", "due_on");
    private static final Set<String> UNIT = Set.of("serial", "code");

    private final PurchaseOrders orders;
    private final Transfers transfers;
    private final Deliveries deliveries;
    private final SerialisedStock stock;
    private final OrderPapers papers;

    OrderRequests(Store store, OrderPapers papers) {
        this.papers = papers;
        this.orders = new PurchaseOrders(store);
        this.transfers = new Transfers(store);
        this.deliveries = new Deliveries(store);
        this.stock = new SerialisedStock(store);
    }

    /** Open lines of the depots that are covered, as the engine reads them. */
    List<Map<String, Object>> open(@Nullable String depot) {
        List<Map<String, Object>> items = new ArrayList<>();
        for (PurchaseLine line : orders.open()) {
            if (depot == null || depot.equals(line.depot())) {
                Map<String, Object> fields = new LinkedHashMap<>();
                fields.put("order", line.order());
                fields.put("part", line.part());
                fields.put("depot", line.depot());
                fields.put("quantity", line.quantity());
                fields.put("received", line.received());
                fields.put("due_on", line.dueOn().toString());
                LocalDate confirmed = line.confirmedOn();
                fields.put("confirmed_on", confirmed == null ? null : confirmed.toString());
                fields.put("price", line.price());
                items.add(fields);
            }
        }
        return items;
    }

    Map<String, Object> act(ShopRequest asked) {
        JsonFields body = asked.fields();
        String what = body.required("do");
        return switch (what) {
            case "place" -> Map.of("order", place(asked));
            case "transfer" -> Map.of("order", transfer(asked));
            case "send_claim", "settle_claim" -> Map.of("number", claim(asked, what));
            case "confirm", "split", "receive", "cancel", "problem" -> line(asked, what);
            default ->
                throw ApiRefusal.badRequest("/do is not known. Fix: choose from place, confirm, split, receive,"
                        + " cancel, problem, transfer, send_claim, settle_claim.");
        };
    }

    private String place(ShopRequest asked) {
        List<NewLine> lines = new ArrayList<>();
        for (JsonFields line : asked.fields().objects("lines", LINE)) {
            lines.add(new NewLine(
                    line.required("part"),
                    asked.depot(line.required("depot")),
                    ShopRequest.number(line, "quantity"),
                    asked.requiredDay(line, "due_on")));
        }
        String first = lines.isEmpty() ? "" : lines.get(0).depot();
        String order = orders.place(
                asked.key(),
                asked.fields().required("supplier"),
                lines,
                asked.fields().text("note"),
                asked.today(first),
                asked.now(),
                asked.by());
        mailIfWanted(order, asked);
        return order;
    }

    private void mailIfWanted(String order, ShopRequest asked) {
        try {
            papers.mailIfWanted(order, orders.file(order), asked.now(), asked.by());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String transfer(ShopRequest asked) {
        Map<String, Double> pieces = new TreeMap<>();
        for (JsonFields line : asked.fields().objects("lines", LINE)) {
            pieces.put(line.required("part"), ShopRequest.number(line, "quantity"));
        }
        return transfers.send(
                asked.key(),
                asked.depot(asked.fields().required("from")),
                asked.depot(asked.fields().required("to")),
                pieces,
                asked.requiredDay(asked.fields(), "day"),
                asked.now(),
                asked.by());
    }

    private Map<String, Object> line(ShopRequest asked, String what) {
        JsonFields body = asked.fields();
        String depot = asked.depot();
        OrderRef ref = new OrderRef(body.required("order"), body.required("part"), depot);
        LocalDate today = asked.today(depot);
        switch (what) {
            case "confirm" ->
                orders.confirm(
                        asked.key(),
                        ref,
                        asked.requiredDay(body, "day"),
                        ShopRequest.number(body, "quantity"),
                        ShopRequest.findMoney(body, "price"),
                        asked.now(),
                        asked.by());
            case "split" -> {
                return Map.of(
                        "order",
                        orders.split(
                                asked.key(),
                                ref,
                                ShopRequest.number(body, "pieces"),
                                asked.requiredDay(body, "day"),
                                today,
                                asked.now(),
                                asked.by()));
            }
            case "receive" -> receive(asked, ref, today);
            case "cancel" -> orders.cancel(asked.key(), ref, body.text("why"), today, asked.now(), asked.by());
            default -> {
                return Map.of("number", problem(asked, ref, today));
            }
        }
        return Map.of("order", ref.order());
    }

    /** Injectors by their serials and codes, other parts by their count. */
    private void receive(ShopRequest asked, OrderRef ref, LocalDate today) {
        JsonFields body = asked.fields();
        List<GoodsIn.Unit> units = body.objects("units", UNIT).stream()
                .map(unit -> new GoodsIn.Unit(unit.required("serial"), unit.text("code")))
                .toList();
        if (units.isEmpty()) {
            orders.receive(asked.key(), ref, ShopRequest.number(body, "pieces"), today, asked.now(), asked.by());
        } else {
            Origin origin = body.constant(Origin.class, "origin");
            if (origin == Origin.UNKNOWN) {
                throw new InvalidValueException("origin", origin, "is not that of a delivery", "send NEW or REMAN");
            }
            stock.receive(
                    asked.key(),
                    new GoodsIn(ref.depot(), ref.part(), origin == null ? Origin.REMAN : origin, units, ref.order()),
                    asked.now(),
                    asked.by());
        }
    }

    private String problem(ShopRequest asked, OrderRef ref, LocalDate today) {
        JsonFields body = asked.fields();
        DeliveryProblem.Kind kind = body.constant(DeliveryProblem.Kind.class, "kind");
        DeliveryProblem.Answer answer = body.constant(DeliveryProblem.Answer.class, "answer");
        if (kind == null || answer == null) {
            throw ApiRefusal.badRequest(
                    "/kind or /answer is missing. Fix: send kind short, wrong or damaged, and answer replace or claim.");
        }
        return deliveries.record(
                asked.key(),
                new Deliveries.Found(
                        ref,
                        kind,
                        ShopRequest.number(body, "pieces"),
                        body.text("words"),
                        answer,
                        body.day("day"),
                        body.yes("in_stock"),
                        body.texts("serials")),
                today,
                asked.now(),
                asked.by());
    }

    private String claim(ShopRequest asked, String what) {
        JsonFields body = asked.fields();
        String number = body.required("number");
        String depot = deliveries.list().stream()
                .filter(problem -> problem.number().equals(number))
                .map(problem -> asked.depot(problem.ref().depot()))
                .findFirst()
                .orElseThrow(() -> new ApiRefusal(
                        404, "No such claim", "There is no claim " + number + ". Fix: check the number.", List.of()));
        if (what.equals("send_claim")) {
            deliveries.send(asked.key(), number, asked.day("day", depot), asked.now(), asked.by());
        } else {
            deliveries.settle(
                    asked.key(),
                    number,
                    asked.day("day", depot),
                    ShopRequest.money(body, "credit"),
                    body.text("reason"),
                    asked.now(),
                    asked.by());
        }
        return number;
    }
}
