package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.returns.Returns;
import dev.injectorplanner.app.returns.Unit;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Cores and claims over the API: shipped, claimed, answered, taken back. */
final class ReturnRequests {
    static final Set<String> FIELDS =
            Set.of("do", "units", "what", "unit", "document", "day", "amount", "credit", "reason");
    private static final Set<String> UNIT = Set.of("truck", "cylinder", "fitted_on", "fitting");

    private final Returns returns;
    private final StoreSql sql;

    ReturnRequests(Store store) {
        this.returns = new Returns(store);
        this.sql = new StoreSql(store.dataSource());
    }

    /** All that was sent of the depots that are covered, the newest first. */
    List<Map<String, Object>> sent(@Nullable String depot) {
        Map<String, String> depots = depots();
        List<Map<String, Object>> items = new ArrayList<>();
        for (UnitReturn row : returns.list()) {
            if (depot == null || depot.equals(depots.get(row.truck()))) {
                Map<String, Object> fields = new LinkedHashMap<>();
                fields.put("what", JsonFields.word(row.what()));
                fields.put("truck", row.truck());
                fields.put("cylinder", row.cylinder());
                fields.put("fitted_on", row.fittedOn().toString());
                fields.put("fitting", row.fitting());
                fields.put("document", row.document());
                fields.put("state", JsonFields.word(row.state()));
                fields.put("sent_on", row.sentOn().toString());
                fields.put("sent_by", row.sentBy());
                fields.put("amount", row.amount());
                LocalDate settled = row.settledOn();
                fields.put("settled_on", settled == null ? null : settled.toString());
                fields.put("settled_by", row.settledBy());
                fields.put("credit", row.credit());
                fields.put("reason", row.reason());
                items.add(fields);
            }
        }
        return items;
    }

    private Map<String, String> depots() {
        Map<String, String> depots = new LinkedHashMap<>();
        sql.list("select truck, depot from truck", row -> List.of(row.getString(1), row.getString(2)))
                .forEach(each -> depots.put(each.get(0), each.get(1)));
        return depots;
    }

    Map<String, Object> act(ShopRequest asked) {
        JsonFields body = asked.fields();
        String what = body.required("do");
        List<Unit> units = new ArrayList<>();
        for (JsonFields unit : body.objects("units", UNIT)) {
            Long fitting = unit.whole("fitting");
            units.add(new Unit(
                    unit.required("truck"),
                    unit.cylinder("cylinder"),
                    asked.requiredDay(unit, "fitted_on"),
                    fitting == null ? 1 : (int) Math.min(fitting, Integer.MAX_VALUE)));
        }
        String depot = covered(asked, units, body.text("document"));
        LocalDate day = asked.day("day", depot);
        String document = switch (what) {
            case "ship" -> returns.ship(asked.key(), units, day, asked.now(), asked.by());
            case "claim" ->
                returns.claim(asked.key(), one(units), ShopRequest.money(body, "amount"), day, asked.now(), asked.by());
            case "settle" -> settle(asked, one(units), day);
            case "credit_all" -> {
                returns.creditAll(asked.key(), body.required("document"), day, asked.now(), asked.by());
                yield body.required("document");
            }
            case "take_back" -> {
                returns.takeBack(asked.key(), body.required("document"), asked.now(), asked.by());
                yield body.required("document");
            }
            default ->
                throw ApiRefusal.badRequest(
                        "/do is not known. Fix: choose from ship, claim, settle, credit_all, take_back.");
        };
        return Map.of("document", document);
    }

    private String settle(ShopRequest asked, Unit unit, LocalDate day) {
        JsonFields body = asked.fields();
        UnitReturn.What kind = body.constant(UnitReturn.What.class, "what");
        return returns.settle(
                asked.key(),
                kind == null ? UnitReturn.What.CORE : kind,
                unit,
                day,
                ShopRequest.money(body, "credit"),
                body.text("reason"),
                asked.now(),
                asked.by());
    }

    private static Unit one(List<Unit> units) {
        if (units.size() != 1) {
            throw ApiRefusal.badRequest("/units must hold one unit here. Fix: send {\"units\": [{...}]}.");
        }
        return units.get(0);
    }

    /** The depot of the first unit; every unit's depot must be covered by the token. */
    private String covered(ShopRequest asked, List<Unit> units, String document) {
        Map<String, String> depots = depots();
        List<String> trucks = new ArrayList<>(units.stream().map(Unit::truck).toList());
        returns.list().stream().filter(row -> row.document().equals(document)).forEach(row -> trucks.add(row.truck()));
        String first = "";
        for (String truck : trucks) {
            String depot = asked.depot(depots.getOrDefault(truck, "of truck " + truck));
            first = first.isEmpty() ? depot : first;
        }
        return first;
    }
}
