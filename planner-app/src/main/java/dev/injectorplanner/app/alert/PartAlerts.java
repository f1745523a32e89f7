package dev.injectorplanner.app.alert;

import dev.injectorplanner.app.alert.AlertRows.Event;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.plan.Plan;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A depot's alerts about parts whose injectors fail sooner: raised once a part and batch, cleared when the records take it back. */
final class PartAlerts {
    private static final String LIMIT =
            "no more failures than earlier injectors of the part had at that age; ask the supplier, hold the batch";
    private static final String GONE = "the records no longer show it";

    private final StoreSql sql;
    private final String depot;
    private final Instant at;

    PartAlerts(StoreSql sql, String depot, Instant at) {
        this.sql = sql;
        this.depot = depot;
        this.at = at;
    }

    AlertCounts update(Plan plan) {
        return sql.inTransaction(connection -> update(connection, plan));
    }

    private AlertCounts update(Connection connection, Plan plan) throws SQLException {
        List<Alert> open = AlertRows.list(
                connection, "where depot = ? and open_key = 0 and rule = ?", depot, AlertKey.FAILS_SOONER);
        Set<String> now = new HashSet<>();
        List<Alert> raised = new ArrayList<>();
        for (LifeChange change : plan.lifeChanges()) {
            String subject = subject(change);
            now.add(subject);
            if (open.stream().noneMatch(alert -> subject.equals(alert.subject()))) {
                raised.add(raised(StoreSql.nextIds(connection, "alert_seq"), subject, change));
            }
        }
        AlertRows.insert(connection, raised);
        AlertRows.insertEvents(
                connection,
                raised.stream()
                        .map(alert -> new Event(alert.id(), at, PlanUpdate.WHO, null, alert.state(), alert.evidence()))
                        .toList());
        clear(
                connection,
                open.stream()
                        .filter(alert -> !now.contains(String.valueOf(alert.subject())))
                        .toList());
        return AlertCounts.raised(raised.size());
    }

    private void clear(Connection connection, List<Alert> gone) throws SQLException {
        List<Alert> cleared =
                gone.stream().map(alert -> AlertEdits.cleared(alert, at, GONE)).toList();
        boolean[] stored = AlertRows.update(connection, cleared, gone);
        List<Event> events = new ArrayList<>();
        for (int i = 0; i < stored.length; i++) {
            if (stored[i]) {
                Alert alert = gone.get(i);
                events.add(new Event(alert.id(), at, PlanUpdate.WHO, alert.state(), AlertState.CLEARED, GONE));
            }
        }
        AlertRows.insertEvents(connection, events);
    }

    private String subject(LifeChange change) {
        return change.part() + " " + change.origin().name().toLowerCase(Locale.ROOT) + " from " + change.supplier()
                + ", fitted since " + change.fittedFrom() + ", at " + depot;
    }

    private Alert raised(long id, String subject, LifeChange change) {
        return new Alert(
                id,
                depot,
                null,
                null,
                AlertKey.FAILS_SOONER,
                subject,
                AlertState.RAISED,
                null,
                change.words(),
                LIMIT,
                "planner default",
                change.noticedOn(),
                null,
                at,
                null,
                null,
                null,
                null,
                null,
                null);
    }
}
