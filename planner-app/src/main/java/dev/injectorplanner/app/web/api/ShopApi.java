package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.order.OrderPapers;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Depot;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.Authentication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** Orders, stock, cores and claims for other programs, under the very rules of the forms; each change with its key. */
@RestController
class ShopApi {
    private static final JsonMapper JSON = new JsonMapper();
    private static final int CREATED = 201;

    private final Store store;
    private final OrderRequests orders;
    private final ReturnRequests returns;
    private final StockRequests stock;
    private final KeyedAnswers answers;
    private final Fleets fleets;
    private final SiteClock clock;

    ShopApi(Application application, SiteClock clock, Fleets fleets, OrderPapers papers) {
        this.store = application.store();
        this.orders = new OrderRequests(store, papers);
        this.returns = new ReturnRequests(store);
        this.stock = new StockRequests(store);
        this.answers = new KeyedAnswers(store.dataSource());
        this.fleets = fleets;
        this.clock = clock;
    }

    @GetMapping(path = "/api/v1/orders", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> orders(
            Authentication known,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit) {
        return page(orders.open(ApiRequest.token(known).depot()), Cursor.of(cursor, limit));
    }

    @PostMapping(path = "/api/v1/orders", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> changeOrders(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        return change("orders", OrderRequests.FIELDS, ApiRequest.token(known), key, request, orders::act);
    }

    @GetMapping(path = "/api/v1/returns", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> returns(
            Authentication known,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit) {
        return page(returns.sent(ApiRequest.token(known).depot()), Cursor.of(cursor, limit));
    }

    @PostMapping(path = "/api/v1/returns", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> changeReturns(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        return change("returns", ReturnRequests.FIELDS, ApiRequest.token(known), key, request, returns::act);
    }

    @GetMapping(path = "/api/v1/stock", produces = MediaType.APPLICATION_JSON_VALUE)
    Map<String, Object> stock(
            Authentication known,
            @RequestParam("depot") String depot,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", required = false) @Nullable String limit) {
        ApiToken token = ApiRequest.token(known);
        String only = token.depot();
        if (!depots().containsKey(depot) || only != null && !only.equals(depot)) {
            throw new ApiRefusal(
                    404,
                    "No such depot",
                    "Depot \"" + depot + "\" is not known, or this token does not cover it. Fix: check the name.",
                    List.of());
        }
        return page(stock.onHand(depot), Cursor.of(cursor, limit));
    }

    @PostMapping(path = "/api/v1/stock", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<String> changeStock(
            Authentication known,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            HttpServletRequest request)
            throws IOException {
        return change("stock", StockRequests.FIELDS, ApiRequest.token(known), key, request, stock::act);
    }

    private Map<String, Depot> depots() {
        return store.inJointTransaction((connection, writer) ->
                writer.all(Depot.class).stream().collect(Collectors.toMap(Depot::depot, depot -> depot)));
    }

    private ResponseEntity<String> change(
            String what,
            Set<String> fields,
            ApiToken token,
            @Nullable String key,
            HttpServletRequest request,
            Function<ShopRequest, Map<String, Object>> act)
            throws IOException {
        if (key == null) {
            throw ApiRefusal.badRequest(
                    "Idempotency-Key is missing. Fix: send a UUID with each change, and the same one"
                            + " when you send it again: it is then made only once.");
        }
        String body = ApiRequest.body(request);
        Instant now = clock.now();
        KeyedAnswers.Answer answer = answers.once(token.id(), key, what + "\n" + body, () -> {
            Map<String, Object> made =
                    refusing(() -> act.apply(ShopRequest.of(body, fields, token, key, now, depots())));
            fleets.changed();
            return new KeyedAnswers.Answer(CREATED, JSON.writeValueAsString(made));
        });
        return ResponseEntity.status(answer.status())
                .contentType(MediaType.APPLICATION_JSON)
                .body(answer.body());
    }

    private static Map<String, Object> refusing(java.util.function.Supplier<Map<String, Object>> work) {
        try {
            return work.get();
        } catch (RefusedEntryException e) {
            throw refused(e.problems());
        } catch (InvalidValueException e) {
            throw refused(List.of(new EntryProblem(
                    e.field(), e.field() + " \"" + e.value() + "\": " + e.reason() + ". Fix: " + e.fix() + ".")));
        }
    }

    private static ApiRefusal refused(List<EntryProblem> problems) {
        List<Map<String, Object>> rows = new ArrayList<>();
        problems.forEach(problem -> rows.add(Map.of("field", "/" + problem.field(), "detail", problem.words())));
        return new ApiRefusal(
                422,
                "The change was refused",
                problems.size() + (problems.size() == 1 ? " thing is" : " things are")
                        + " wrong with it, so nothing was changed. Fix: see problems, correct them and send it again.",
                rows);
    }

    private static Map<String, Object> page(List<Map<String, Object>> items, Cursor cursor) {
        int from = (int) Math.min(items.size(), cursor.after());
        int to = Math.min(items.size(), from + cursor.most());
        Map<String, Object> page = new java.util.LinkedHashMap<>();
        page.put("items", items.subList(from, to));
        page.put("next", to < items.size() ? Cursor.text(to) : null);
        return page;
    }
}
