package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.people.ApiToken;
import dev.injectorplanner.app.people.Secrets;
import dev.injectorplanner.app.people.Who;
import dev.injectorplanner.core.fleet.Depot;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a program asks of orders, stock, or cores and claims: its fields, who asks and when.
 *
 * @param fields the body
 * @param token who asks
 * @param key names the change for good
 * @param now the moment
 * @param depots known depots by name
 */
record ShopRequest(JsonFields fields, ApiToken token, String key, Instant now, Map<String, Depot> depots) {

    static ShopRequest of(
            String body,
            java.util.Set<String> known,
            ApiToken token,
            String key,
            Instant now,
            Map<String, Depot> depots) {
        JsonNode sent = SentJson.read(new JsonMapper(), body, "send {\"do\": ..., ...}");
        return new ShopRequest(
                new JsonFields(sent, "", known), token, "api " + Secrets.hash(token.id() + " " + key), now, depots);
    }

    String by() {
        return Who.shortened(token.who());
    }

    /** A depot that the token covers. */
    String depot(String name) {
        String only = token.depot();
        if (!depots.containsKey(name) || only != null && !only.equals(name)) {
            throw new ApiRefusal(
                    404,
                    "No such depot",
                    "Depot \"" + name + "\" is not known, or this token does not cover it. Fix: check the name.",
                    List.of());
        }
        return name;
    }

    String depot() {
        return depot(fields.required("depot"));
    }

    LocalDate today(String depot) {
        Depot there = depots.get(depot);
        return LocalDate.ofInstant(now, there == null ? java.time.ZoneOffset.UTC : there.timeZone());
    }

    /** A day of the body, or today at the depot. */
    LocalDate day(String name, String depot) {
        LocalDate day = fields.day(name);
        return day == null ? today(depot) : day;
    }

    LocalDate requiredDay(JsonFields from, String name) {
        LocalDate day = from.day(name);
        if (day == null) {
            throw ApiRefusal.badRequest("/" + name + " is missing. Fix: send a date such as 2026-03-02.");
        }
        return day;
    }

    static double number(JsonFields from, String name) {
        Double number = from.number(name);
        if (number == null) {
            throw ApiRefusal.badRequest("/" + name + " is missing. Fix: send a number.");
        }
        return number;
    }

    static @Nullable BigDecimal findMoney(JsonFields from, String name) {
        Double number = from.number(name);
        return number == null ? null : BigDecimal.valueOf(number);
    }

    static BigDecimal money(JsonFields from, String name) {
        return BigDecimal.valueOf(number(from, name));
    }
}
