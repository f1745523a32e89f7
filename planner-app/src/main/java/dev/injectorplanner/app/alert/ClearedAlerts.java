package dev.injectorplanner.app.alert;

import dev.injectorplanner.app.alert.AlertRows.Event;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Alerts that were cleared because of work which turns out not to have been done: they are open again. */
public final class ClearedAlerts {
    private ClearedAlerts() {}

    /**
     * Work that is taken back.
     *
     * @param truck the truck
     * @param doneOn its day
     * @param cylinders whose injectors were not replaced after all
     * @param nothing whether no injector at all was replaced
     * @param tested moment of tests that were not made after all, or null
     * @param at now
     * @param by who takes it back
     * @param why in words, for the history
     */
    public record ByWork(
            String truck,
            LocalDate doneOn,
            Set<Integer> cylinders,
            boolean nothing,
            @Nullable Instant tested,
            Instant at,
            String by,
            String why) {
        boolean cleared(Alert alert) {
            String why = String.valueOf(alert.clearedWhy());
            Integer cylinder = alert.cylinder();
            boolean replaced = why.equals(ClearedReason.replaced(doneOn))
                    && (cylinder == null ? nothing : cylinders.contains(cylinder));
            return replaced
                    || tested != null
                            && why.equals(ClearedReason.tested(
                                    tested.atZone(ZoneOffset.UTC).toLocalDate()));
        }
    }

    /** Opens those alerts again, unless the same is open anew. */
    public static void openAgain(Connection connection, ByWork work) throws SQLException {
        List<Alert> open = AlertRows.list(connection, "where truck_key = ? and open_key = 0", work.truck());
        Set<AlertKey> there = open.stream().map(AlertKey::of).collect(Collectors.toSet());
        List<Alert> before =
                AlertRows.list(connection, "where truck_key = ? and state = 'CLEARED' order by id desc", work.truck())
                        .stream()
                        .filter(alert -> work.cleared(alert) && there.add(AlertKey.of(alert)))
                        .toList();
        List<Alert> after = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        for (Alert alert : before) {
            AlertState state = alert.seenAt() == null ? AlertState.RAISED : AlertState.SEEN;
            after.add(AlertEdits.openAgain(alert, state));
            events.add(new Event(alert.id(), work.at(), work.by(), AlertState.CLEARED, state, work.why()));
        }
        AlertRows.update(connection, after, before);
        AlertRows.insertEvents(connection, events);
    }
}
