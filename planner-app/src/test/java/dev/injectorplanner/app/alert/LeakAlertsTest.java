package dev.injectorplanner.app.alert;

import static dev.injectorplanner.app.testkit.Database.NORTH;
import static dev.injectorplanner.app.testkit.PlanByHand.DAY;
import static dev.injectorplanner.app.testkit.PlanByHand.mustNotWait;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.core.due.DueItem;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Alerts of what is a safety item are known by their fault code, on both databases. */
class LeakAlertsTest {
    @ParameterizedTest
    @EnumSource(Database.class)
    void a_muted_small_leak_does_not_silence_a_large_one(Database database) {
        Store store = database.empty();
        Alerts alerts = new Alerts(store.dataSource());
        DueItem small = mustNotWait("T-1", "P0094", DAY.plusDays(2));
        plan(alerts, DAY, List.of(small));
        alerts.mute(only(alerts).id(), DAY.plusDays(10), "parts are on their way", "manager", at(DAY), DAY);
        plan(alerts, DAY.plusDays(1), List.of(small, mustNotWait("T-1", "P0093", DAY.plusDays(3))));
        assertThat(alerts.list(NORTH, EnumSet.of(AlertState.RAISED, AlertState.MUTED)))
                .extracting(Alert::subject, Alert::state)
                .containsExactlyInAnyOrder(tuple("P0094", AlertState.MUTED), tuple("P0093", AlertState.RAISED));
    }

    /** The statement of the migration itself, on an alert as it was before. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void an_older_alert_of_a_leak_takes_the_first_code_of_its_evidence(Database database) throws Exception {
        Store store = database.empty();
        Alerts alerts = new Alerts(store.dataSource());
        DueItem leak = mustNotWait("T-1", "P0093", DAY.plusDays(2));
        plan(alerts, DAY, List.of(leak));
        alerts.seen(only(alerts).id(), "manager", at(DAY));
        String migration;
        try (var in = getClass().getResourceAsStream("/db/migration/common/V10__alert_fault_code.sql")) {
            migration = new String(in.readAllBytes(), StandardCharsets.UTF_8).replace(";", "");
        }
        new StoreSql(store.dataSource()).inTransaction(connection -> {
            StoreSql.update(
                    connection,
                    "update alert set subject = null, subject_key = '', evidence = ?",
                    "large fuel leak (P0093), small fuel leak (P0094) reported on 2026-03-01");
            return StoreSql.update(connection, migration);
        });
        assertThat(only(alerts).subject()).isEqualTo("P0093");
        plan(alerts, DAY.plusDays(1), List.of(leak));
        assertThat(only(alerts).state()).isEqualTo(AlertState.SEEN);
    }

    private static void plan(Alerts alerts, LocalDate today, List<DueItem> dueItems) {
        alerts.update(PlanByHand.of(today, dueItems, List.of()), at(today));
    }

    private static Instant at(LocalDate day) {
        return day.atTime(6, 0).toInstant(ZoneOffset.UTC);
    }

    private static Alert only(Alerts alerts) {
        List<Alert> open = alerts.list(null, EnumSet.complementOf(EnumSet.of(AlertState.CLEARED)));
        assertThat(open).hasSize(1);
        return open.get(0);
    }
}
