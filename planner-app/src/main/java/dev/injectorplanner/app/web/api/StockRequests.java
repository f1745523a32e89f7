package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.stock.Stocktakes;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Stock over the API: what is on hand, and a stocktake. */
final class StockRequests {
    static final Set<String> FIELDS = Set.of("do", "depot", "day", "counts");
    private static final Set<String> COUNT = Set.of("part", "expected", "counted", "reason");

    private final Stocktakes stocktakes;
    private final StoreSql sql;

    StockRequests(Store store) {
        this.stocktakes = new Stocktakes(store);
        this.sql = new StoreSql(store.dataSource());
    }

    /** On hand at a depot, by part, with the number of the last movement. */
    List<Map<String, Object>> onHand(String depot) {
        return sql.list(
                "select s.part, s.on_hand, (select max(m.id) from stock_movement m where m.depot = s.depot and"
                        + " m.part = s.part) as movement from stock s where s.depot = ? order by s.part",
                row -> {
                    Map<String, Object> fields = new LinkedHashMap<>();
                    fields.put("depot", depot);
                    fields.put("part", row.getString("part"));
                    fields.put("on_hand", row.getDouble("on_hand"));
                    fields.put("movement", row.getObject("movement"));
                    return fields;
                },
                depot);
    }

    Map<String, Object> act(ShopRequest asked) {
        if (!asked.fields().required("do").equals("count")) {
            throw ApiRefusal.badRequest("/do is not known. Fix: send count.");
        }
        String depot = asked.depot();
        List<Stocktakes.Count> counts = new ArrayList<>();
        for (JsonFields count : asked.fields().objects("counts", COUNT)) {
            counts.add(new Stocktakes.Count(
                    count.required("part"),
                    ShopRequest.number(count, "expected"),
                    ShopRequest.number(count, "counted"),
                    count.text("reason")));
        }
        return Map.of(
                "stocktake",
                stocktakes.post(asked.key(), depot, counts, asked.day("day", depot), asked.now(), asked.by()));
    }
}
