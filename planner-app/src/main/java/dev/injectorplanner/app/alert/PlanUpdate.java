package dev.injectorplanner.app.alert;

import dev.injectorplanner.app.alert.AlertRows.Event;
import dev.injectorplanner.app.alert.NextState.Step;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.due.DueItem;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Updates a depot's alerts from a plan. Open alerts are read in blocks and each block is one transaction, so that the work grows with the number of alerts and a crash leaves whole alerts only; running it again
 * finishes it and changes nothing twice.
 */
final class PlanUpdate {
    /** Who the history names. */
    static final String WHO = "plan";

    /** One that went away by itself and is found again within this time is the old one, not a new one to nag about. */
    static final Duration SAME_AGAIN = Duration.ofDays(14);

    private final StoreSql sql;
    private final String depot;
    private final Instant at;
    private final Map<AlertKey, PlannedItem> found;
    private final ClearedReason happened;
    private final NextState next;
    private final Set<AlertKey> known = new HashSet<>();
    private AlertCounts counts = AlertCounts.NONE;

    PlanUpdate(StoreSql sql, Planned planned, String depot, Instant at) {
        this.sql = sql;
        this.depot = depot;
        this.at = at;
        this.found = PlannedItem.of(planned.plan(), depot);
        this.happened = new ClearedReason(planned.fleet(), planned.plan().today());
        this.next = new NextState(planned.plan().today(), at);
    }

    AlertCounts run() {
        List<Long> ids = sql.inTransaction(connection -> StoreSql.list(
                connection,
                "select id from alert where depot = ? and open_key = 0 and truck_key <> '' order by id",
                row -> row.getLong(1),
                depot));
        for (int from = 0; from < ids.size(); from += StoreSql.IDS) {
            List<Long> block = ids.subList(from, Math.min(ids.size(), from + StoreSql.IDS));
            sql.inTransaction(connection -> {
                block(connection, block);
                return true;
            });
        }
        raiseNew();
        return counts;
    }

    private void block(Connection connection, List<Long> ids) throws SQLException {
        List<Alert> open = AlertRows.listById(connection, ids);
        List<Step> steps = new ArrayList<>();
        List<Alert> before = new ArrayList<>();
        for (Alert alert : open) {
            AlertKey key = AlertKey.of(alert);
            known.add(key);
            if (alert.state() == AlertState.CLEARED) {
                continue; // this very moment
            }
            PlannedItem now = found.get(key);
            if (now == null && !happened.knows(alert)) {
                continue; // another depot has the truck now, and its plan finds the alert again
            }
            Step step = next.of(alert, now, now == null ? happened.to(alert) : "");
            if (step.alert().equals(alert)) {
                counts = counts.plus(AlertCounts.of(alert, step));
            } else {
                steps.add(step);
                before.add(alert);
            }
        }
        store(connection, before, steps);
    }

    private void store(Connection connection, List<Alert> before, List<Step> steps) throws SQLException {
        boolean[] stored =
                AlertRows.update(connection, steps.stream().map(Step::alert).toList(), before);
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < stored.length; i++) {
            if (!stored[i]) {
                continue; // it was seen, muted or told this very moment: the next plan looks again
            }
            Step step = steps.get(i);
            counts = counts.plus(AlertCounts.of(before.get(i), step));
            if (!step.why().isEmpty()) {
                events.add(new Event(
                        step.alert().id(),
                        at,
                        WHO,
                        before.get(i).state(),
                        step.alert().state(),
                        step.why()));
            }
        }
        AlertRows.insertEvents(connection, events);
    }

    private void raiseNew() {
        List<Map.Entry<AlertKey, PlannedItem>> fresh = found.entrySet().stream()
                .filter(entry -> !known.contains(entry.getKey()))
                .toList();
        for (int from = 0; from < fresh.size(); from += StoreSql.IDS) {
            List<Map.Entry<AlertKey, PlannedItem>> block =
                    fresh.subList(from, Math.min(fresh.size(), from + StoreSql.IDS));
            sql.inTransaction(connection -> {
                raise(connection, block);
                return true;
            });
        }
    }

    private void raise(Connection connection, List<Map.Entry<AlertKey, PlannedItem>> block) throws SQLException {
        Map<AlertKey, Alert> earlier = earlier(connection, block);
        long id = StoreSql.nextIds(connection, "alert_seq");
        List<Alert> raised = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        List<Alert> before = new ArrayList<>();
        List<Step> again = new ArrayList<>();
        for (Map.Entry<AlertKey, PlannedItem> entry : block) {
            PlannedItem now = entry.getValue();
            Alert old = earlier.get(entry.getKey());
            if (old != null) {
                before.add(old);
                again.add(again(old, now));
                continue;
            }
            Alert alert = raised(id++, now);
            raised.add(alert);
            events.add(new Event(alert.id(), at, WHO, null, alert.state(), alert.evidence()));
        }
        AlertRows.insert(connection, raised);
        AlertRows.insertEvents(connection, events);
        store(connection, before, again);
        counts = counts.plus(AlertCounts.raised(raised.size()));
    }

    /** One of another depot whose truck came here, or one that had gone by itself. */
    private Map<AlertKey, Alert> earlier(Connection connection, List<Map.Entry<AlertKey, PlannedItem>> block)
            throws SQLException {
        Set<String> trucks = new HashSet<>();
        block.forEach(entry -> trucks.add(entry.getKey().truck()));
        Map<AlertKey, Alert> earlier = new HashMap<>();
        for (Alert alert : AlertRows.listEarlier(connection, trucks, at.minus(SAME_AGAIN))) {
            String why = alert.clearedWhy();
            if (why == null || why.startsWith(ClearedReason.NOT_FOUND)) {
                earlier.merge(AlertKey.of(alert), alert, (one, other) -> one.clearedAt() == null ? one : other);
            }
        }
        return earlier;
    }

    private Step again(Alert old, PlannedItem now) {
        if (old.state() != AlertState.CLEARED) {
            return next.of(old, now, "");
        }
        AlertState back =
                now.week() != null ? AlertState.PLANNED : old.seenAt() == null ? AlertState.RAISED : AlertState.SEEN;
        return new Step(NextState.with(old, now, back, old.told()), "due again");
    }

    private Alert raised(long id, PlannedItem now) {
        DueItem item = now.item();
        return new Alert(
                id,
                depot,
                item.truck(),
                item.cylinder(),
                item.kind().name(),
                AlertKey.subject(item),
                now.week() == null ? AlertState.RAISED : AlertState.PLANNED,
                item.action().name(),
                item.evidence(),
                item.limit(),
                item.limitSource(),
                item.by(),
                now.week(),
                at,
                null,
                null,
                null,
                null,
                null,
                null);
    }
}
