package dev.injectorplanner.app.web;

import dev.injectorplanner.app.order.NewLine;
import dev.injectorplanner.app.order.OrderRef;
import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.Visitor;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.StockLine;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;

/** What buyer and storeman change, by page and by program, with the notes that it must leave. */
final class AuditedShop {
    private static final LocalDate FITTED = OneOfEach.DAY.minusDays(15);

    private final URI address;
    private final AuditNotes notes;
    private final Store store;
    private final String secret;
    private final String program;

    AuditedShop(URI address, RunningApp app, AuditNotes notes) {
        this.address = address;
        this.notes = notes;
        this.store = app.application().store();
        var token = new ApiTokens(store.dataSource()).make("buying", EnumSet.allOf(Scope.class), null, 1, "test");
        this.secret = token.secret();
        this.program = token.token().who();
    }

    void all() throws Exception {
        String order = new PurchaseOrders(store)
                .place(
                        "shop",
                        "Parts & Sons",
                        List.of(new NewLine("SEAL-1", "North", 40, OneOfEach.DAY.plusDays(7))),
                        Instant.now(),
                        "test");
        deliveries(new OrderRef(order, "SEAL-1", "North"));
        suppliers(order);
        count();
        returns();
        programs(order);
    }

    private void page(String route, Role who, String page, String note, String... fields) throws Exception {
        Visitor visitor = Visitor.as(who, address);
        notes.take(
                route,
                who.name().toLowerCase(java.util.Locale.ROOT),
                note,
                () -> visitor.post(page, route, AuditNotes.form(fields)));
    }

    private void deliveries(OrderRef ref) throws Exception {
        String[] problem = {
            "key",
            "p1",
            "do",
            "problem",
            "order",
            ref.order(),
            "part",
            ref.part(),
            "depot",
            ref.depot(),
            "kind",
            "SHORT",
            "pieces",
            "4",
            "words",
            "four missing",
            "answer",
            "CLAIM"
        };
        page("/orders/line", Role.STOREMAN, "/orders", "record a delivery problem", problem);
        page(
                "/orders/line",
                Role.BUYER,
                "/orders",
                "split an order line",
                "key",
                "p2",
                "do",
                "split",
                "order",
                ref.order(),
                "part",
                ref.part(),
                "depot",
                ref.depot(),
                "pieces",
                "6",
                "day",
                "2026-04-01");
        String claims = "/orders/claims";
        page(claims, Role.BUYER, "/orders", "send a claim", "key", "p3", "do", "send", "number", "CL-00001");
        page(
                claims,
                Role.BUYER,
                "/orders",
                "note a credit",
                "key",
                "p4",
                "do",
                "settle",
                "number",
                "CL-00001",
                "day",
                "2026-03-20",
                "credit",
                "8.50",
                "reason",
                "");
    }

    private void suppliers(String order) throws Exception {
        page(
                "/orders/suppliers",
                Role.BUYER,
                "/orders/suppliers",
                "change a supplier",
                "supplier",
                "Parts & Sons",
                "mail",
                "orders@parts.example",
                "address",
                "Dock Road 5",
                "customer",
                "C-1");
        page("/orders/mail", Role.BUYER, "/orders", "mail an order", "order", order);
    }

    private void count() throws Exception {
        double seals = store.snapshot().stock().stream()
                .filter(line -> line.part().equals("SEAL-1") && line.depot().equals("North"))
                .mapToDouble(StockLine::onHand)
                .sum();
        page(
                "/stock/count",
                Role.STOREMAN,
                "/stock",
                "post a stocktake",
                "key",
                "c1",
                "depot",
                "North",
                "part",
                "SEAL-1",
                "expected0",
                String.valueOf(seals),
                "counted0",
                String.valueOf(seals + 1),
                "reason0",
                "behind the rack");
    }

    private static FittedInjector reman(int cylinder, LocalDate removed) {
        return new FittedInjector(
                "T-2",
                cylinder,
                "INJ-4R",
                "SHOP-" + cylinder,
                "SH0" + cylinder,
                Origin.REMAN,
                FITTED,
                null,
                null,
                removed,
                null,
                null,
                removed == null ? null : Found.FAILED);
    }

    private void returns() throws Exception {
        store.inJointTransaction((connection, writer) -> writer.merge(
                FittedInjector.class,
                List.of(reman(1, null), reman(2, null), reman(4, OneOfEach.DAY.minusDays(3))),
                true));
        String one = "1\t" + FITTED + "\t1\tT-2";
        page("/returns/ship", Role.STOREMAN, "/returns", "ship cores", "key", "r1", "unit", one);
        page(
                "/returns/answer",
                Role.STOREMAN,
                "/returns",
                "take back a shipment",
                "key",
                "r2",
                "do",
                "back",
                "document",
                "RN-00001");
        page("/returns/ship", Role.BUYER, "/returns", "ship cores", "key", "r3", "unit", one);
        page(
                "/returns/answer",
                Role.BUYER,
                "/returns",
                "note that it was refused",
                "key",
                "r4",
                "do",
                "settle",
                "what",
                "CORE",
                "unit",
                one,
                "day",
                "2026-03-20",
                "credit",
                "0",
                "reason",
                "tip broken");
        page(
                "/returns/claim",
                Role.BUYER,
                "/returns",
                "send a claim",
                "key",
                "r5",
                "unit",
                "4\t" + FITTED + "\t1\tT-2",
                "amount",
                "410");
    }

    private void programs(String order) throws Exception {
        program(
                "orders",
                "receive against an order",
                "{\"do\":\"receive\",\"order\":\"" + order
                        + "\",\"part\":\"SEAL-1\",\"depot\":\"North\",\"pieces\":2}");
        program(
                "returns",
                "ship cores",
                "{\"do\":\"ship\",\"units\":[{\"truck\":\"T-2\",\"cylinder\":2,\"fitted_on\":\"" + FITTED + "\"}]}");
        double injectors = store.snapshot().stock().stream()
                .filter(line -> line.part().equals("INJ-4R") && line.depot().equals("North"))
                .mapToDouble(StockLine::onHand)
                .sum();
        program(
                "stock",
                "post a stocktake",
                "{\"do\":\"count\",\"depot\":\"North\",\"counts\":[{\"part\":\"INJ-4R\",\"expected\":" + injectors
                        + ",\"counted\":" + (injectors + 4) + ",\"reason\":\"van emptied\"}]}");
    }

    private void program(String path, String note, String body) throws Exception {
        String route = "/api/v1/" + path;
        HttpRequest request = HttpRequest.newBuilder(address.resolve(route))
                .header("Authorization", "Bearer " + secret)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", "audited " + path)
                .POST(BodyPublishers.ofString(body))
                .build();
        notes.take(route, program, note, () -> HttpClient.newHttpClient().send(request, BodyHandlers.ofString()));
    }
}
