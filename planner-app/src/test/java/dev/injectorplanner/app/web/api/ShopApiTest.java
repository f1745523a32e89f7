package dev.injectorplanner.app.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.order.PurchaseOrders;
import dev.injectorplanner.app.order.SupplierContact;
import dev.injectorplanner.app.order.Suppliers;
import dev.injectorplanner.app.people.ApiTokens;
import dev.injectorplanner.app.people.Scope;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.testkit.PlannerRuns;
import dev.injectorplanner.app.web.RunningApp;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A buying program works the whole loop over the API: ordered, confirmed, received in parts, counted, shipped, credited. */
@PlannerRuns
class ShopApiTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Set<Scope> ALL = EnumSet.allOf(Scope.class);
    private static final String SUPPLIER = "Parts & Sons";

    private final HttpClient client = HttpClient.newHttpClient();

    private static String token(RunningApp app, Set<Scope> scopes, String depot) {
        return new ApiTokens(app.application().store().dataSource())
                .make("buying", scopes, depot, 1, "test")
                .secret();
    }

    private HttpResponse<String> send(URI address, String path, String token, String key, String body)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve("/api/v1/" + path))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body));
        if (!key.isEmpty()) {
            request.header("Idempotency-Key", key);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private JsonNode ask(URI address, String path, String token) throws Exception {
        return JSON.readTree(client.send(
                        HttpRequest.newBuilder(address.resolve("/api/v1/" + path))
                                .header("Authorization", "Bearer " + token)
                                .build(),
                        BodyHandlers.ofString())
                .body());
    }

    private static String place(double quantity) {
        return """
                {"do":"place","supplier":"%s","note":"by van","lines":[
                  {"part":"SEAL-1","depot":"North","quantity":%s,"due_on":"2026-03-12"}]}
                """.formatted(SUPPLIER, quantity);
    }

    private static double onHand(RunningApp app, String part) {
        return app.application().store().snapshot().stock().stream()
                .filter(line -> line.part().equals(part) && line.depot().equals("North"))
                .mapToDouble(StockLine::onHand)
                .sum();
    }

    private String order(URI address, String token, String key, double quantity) throws Exception {
        HttpResponse<String> answer = send(address, "orders", token, key, place(quantity));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        return JSON.readTree(answer.body()).path("order").stringValue();
    }

    @Test
    void an_order_goes_its_way_and_each_key_counts_once(URI address, RunningApp app) throws Exception {
        String token = token(app, ALL, null);
        String order = order(address, token, "o-1", 40);
        assertThat(order(address, token, "o-1", 40)).isEqualTo(order);
        assertThat(send(address, "orders", token, "o-1", place(41)).statusCode())
                .isEqualTo(409);
        String line = "\"order\":\"" + order + "\",\"part\":\"SEAL-1\",\"depot\":\"North\"";
        double before = onHand(app, "SEAL-1");
        for (String body : List.of(
                "{\"do\":\"confirm\"," + line + ",\"day\":\"2026-03-20\",\"quantity\":40,\"price\":2.4}",
                "{\"do\":\"receive\"," + line + ",\"pieces\":15}",
                "{\"do\":\"problem\"," + line
                        + ",\"pieces\":5,\"kind\":\"damaged\",\"words\":\"crushed\",\"answer\":\"claim\"}",
                "{\"do\":\"split\"," + line + ",\"pieces\":8,\"day\":\"2026-04-02\"}",
                "{\"do\":\"cancel\"," + line + ",\"why\":\"enough\"}")) {
            String key = "k" + body.hashCode();
            HttpResponse<String> first = send(address, "orders", token, key, body);
            assertThat(first.statusCode()).as(body + first.body()).isEqualTo(201);
            assertThat(send(address, "orders", token, key, body).body()).isEqualTo(first.body());
        }
        assertThat(onHand(app, "SEAL-1")).isEqualTo(before + 15);
        List<PurchaseLine> lines = app.application().store().snapshot().purchaseLines().stream()
                .filter(row -> row.order().startsWith(order))
                .toList();
        assertThat(lines).extracting(PurchaseLine::quantity).containsExactly(15.0, 8.0);
        JsonNode items = ask(address, "orders?limit=1000", token).path("items");
        assertThat(items.toString()).contains(order + "-2").doesNotContain("\"order\":\"" + order + "\"");
    }

    @Test
    void refusals_say_where_and_why_and_change_nothing(URI address, RunningApp app) throws Exception {
        String token = token(app, ALL, null);
        String order = order(address, token, "r-1", 20);
        String line = "\"order\":\"" + order + "\",\"part\":\"SEAL-1\",\"depot\":\"North\"";
        double before = onHand(app, "SEAL-1");
        HttpResponse<String> tooMany =
                send(address, "orders", token, "r-2", "{\"do\":\"receive\"," + line + ",\"pieces\":21}");
        assertThat(tooMany.statusCode()).isEqualTo(422);
        assertThat(tooMany.body()).contains("21 came, 20 are open", "\"field\":\"/pieces\"");
        assertThat(send(address, "orders", token, "", place(1)).statusCode()).isEqualTo(400);
        assertThat(send(address, "orders", token, "r-3", "{\"do\":\"dance\"}").body())
                .contains("choose from place");
        assertThat(send(address, "orders", token(app, ALL, "North"), "r-4", place(1).replace("North", "Moon"))
                        .statusCode())
                .isEqualTo(404);
        assertThat(send(address, "orders", token(app, EnumSet.of(Scope.ORDERS_READ), null), "r-5", place(1))
                        .statusCode())
                .isEqualTo(403);
        assertThat(onHand(app, "SEAL-1")).isEqualTo(before);
    }

    @Test
    void an_order_is_mailed_where_its_supplier_wants_mail(URI address, RunningApp app) throws Exception {
        Store store = app.application().store();
        Suppliers suppliers = new Suppliers(store);
        SupplierContact before = suppliers.of(SUPPLIER);
        suppliers.save(new SupplierContact(SUPPLIER, "orders@supplier.example", "", "", true), Instant.now(), "Kim");
        String order = order(address, token(app, ALL, null), "m-1", 10);
        suppliers.save(before, Instant.now(), "Kim");
        assertThat(new PurchaseOrders(store).file(order).head().orElseThrow().mailedTo())
                .isEqualTo("orders@supplier.example");
    }

    @Test
    void injectors_are_received_by_serial_and_stock_is_counted(URI address, RunningApp app) throws Exception {
        String token = token(app, ALL, null);
        String body = place(2).replace("SEAL-1", "INJ-4R");
        String order = JSON.readTree(send(address, "orders", token, "s-1", body).body())
                .path("order")
                .stringValue();
        double before = onHand(app, "INJ-4R");
        String receive = "{\"do\":\"receive\",\"order\":\"" + order
                + "\",\"part\":\"INJ-4R\",\"depot\":\"North\",\"origin\":\"reman\",\"units\":["
                + "{\"serial\":\"API-R1\",\"code\":\"PQ12\"},{\"serial\":\"API-R2\",\"code\":\"PQ34\"}]}";
        assertThat(send(address, "orders", token, "s-2", receive).statusCode()).isEqualTo(201);
        assertThat(send(address, "orders", token, "s-2", receive).statusCode()).isEqualTo(201);
        assertThat(onHand(app, "INJ-4R")).isEqualTo(before + 2);
        String count = "{\"do\":\"count\",\"depot\":\"North\",\"counts\":[{\"part\":\"INJ-4R\",\"expected\":"
                + (before + 2) + ",\"counted\":" + (before + 3) + ",\"reason\":\"found in the van\"}]}";
        HttpResponse<String> counted = send(address, "stock", token, "s-3", count);
        assertThat(counted.statusCode()).as(counted.body()).isEqualTo(201);
        assertThat(send(address, "stock", token, "s-4", count).body()).contains("count this part again");
        assertThat(ask(address, "stock?depot=North", token).path("items").toString())
                .contains("\"on_hand\":" + (before + 3));
    }

    @Test
    void cores_are_shipped_and_credited(URI address, RunningApp app) throws Exception {
        String token = token(app, ALL, null);
        LocalDate fitted = LocalDate.of(2026, 2, 20);
        FittedInjector reman = new FittedInjector(
                "T-2", 4, "INJ-4R", "API-C4", "ZZ44", Origin.REMAN, fitted, null, null, null, null, null, null);
        app.application()
                .store()
                .inJointTransaction((connection, writer) -> writer.merge(FittedInjector.class, List.of(reman), true));
        String unit = "\"units\":[{\"truck\":\"T-2\",\"cylinder\":4,\"fitted_on\":\"2026-02-20\"}]";
        HttpResponse<String> shipped =
                send(address, "returns", token, "c-1", "{\"do\":\"ship\"," + unit + ",\"day\":\"2026-03-02\"}");
        assertThat(shipped.statusCode()).as(shipped.body()).isEqualTo(201);
        String note = JSON.readTree(shipped.body()).path("document").stringValue();
        String settle = "{\"do\":\"settle\",\"what\":\"core\"," + unit
                + ",\"day\":\"2026-03-09\",\"credit\":100,\"reason\":\"tip worn\"}";
        assertThat(send(address, "returns", token, "c-2", settle).statusCode()).isEqualTo(201);
        assertThat(send(address, "returns", token, "c-3", settle).body()).contains("was answered on 2026-03-09");
        assertThat(ask(address, "returns", token).path("items").toString())
                .contains("\"document\":\"" + note + "\",\"state\":\"credited\"");
    }

    /** Two buyers send at once, each request twice: nothing is lost, nothing counts double, no number is given twice. */
    @Test
    void two_buyers_at_once_lose_nothing(URI address, RunningApp app) throws Exception {
        List<String> tokens = List.of(token(app, ALL, null), token(app, ALL, "North"));
        String order = order(address, tokens.get(0), "two-0", 100);
        double before = onHand(app, "SEAL-1");
        String receive =
                "{\"do\":\"receive\",\"order\":\"" + order + "\",\"part\":\"SEAL-1\",\"depot\":\"North\",\"pieces\":1}";
        var buyers = Executors.newFixedThreadPool(4);
        List<Callable<Integer>> sendings = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            String token = tokens.get(i % 2);
            String key = "two-" + (i + 1);
            Callable<Integer> sending = () -> {
                int status = send(address, "orders", token, key, receive).statusCode();
                return status == 409
                        ? send(address, "orders", token, key, receive).statusCode()
                        : status;
            };
            sendings.add(sending);
            sendings.add(sending);
        }
        for (var each : buyers.invokeAll(sendings)) {
            assertThat(each.get()).isIn(201, 409);
        }
        buyers.shutdown();
        assertThat(onHand(app, "SEAL-1")).isEqualTo(before + 20);
        assertThat(app.application().store().snapshot().purchaseLines())
                .filteredOn(line -> line.order().equals(order))
                .singleElement()
                .satisfies(line -> assertThat(line.received()).isEqualTo(20));
    }
}
