package dev.injectorplanner.app.alert;

import static dev.injectorplanner.app.testkit.Database.NORTH;
import static dev.injectorplanner.app.testkit.PlanByHand.DAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeChange;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A part that fails sooner is told once a depot, goes on being one alert, and is cleared when the records take it back. */
class PartAlertsTest {
    private static LifeChange change(int failures) {
        return new LifeChange(
                "INJ-4R",
                "Calder Diesel Supply",
                Origin.NEW,
                LocalDate.of(2026, 1, 1),
                null,
                286,
                failures,
                2.8,
                DAY.minusDays(3));
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void one_alert_until_the_records_take_it_back(Database database) {
        Alerts alerts = new Alerts(database.empty().dataSource());
        alerts.update(PlanByHand.of(DAY, List.of(), change(11)), at(DAY));
        Alert raised = only(alerts);
        assertThat(raised.depot()).isEqualTo(NORTH);
        assertThat(raised.truck()).isNull();
        assertThat(raised.ruleWords()).isEqualTo("fails sooner");
        assertThat(raised.about()).contains("INJ-4R new from Calder Diesel Supply", "2026-01-01", NORTH);
        assertThat(raised.evidence()).contains("11 of 286 failed or were found worn, 2.8 expected");
        assertThat(alerts.listUntold(NORTH)).containsExactly(raised);
        assertThat(alerts.listUntoldJobs()).isEmpty();

        alerts.seen(raised.id(), "manager", at(DAY));
        alerts.update(PlanByHand.of(DAY.plusDays(1), List.of(), change(13)), at(DAY.plusDays(1)));
        assertThat(only(alerts).state()).isEqualTo(AlertState.SEEN);

        alerts.update(PlanByHand.of(DAY.plusDays(2), List.of()), at(DAY.plusDays(2)));
        assertThat(alerts.list(NORTH, EnumSet.complementOf(EnumSet.of(AlertState.CLEARED))))
                .isEmpty();
        assertThat(alerts.get(raised.id()).clearedWhy()).isEqualTo("the records no longer show it");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void it_stands_beside_the_alerts_of_trucks(Database database) {
        Alerts alerts = new Alerts(database.empty().dataSource());
        DueItem leak = PlanByHand.mustNotWait("T-1", "P0093", DAY.plusDays(2));
        alerts.update(PlanByHand.of(DAY, List.of(leak), change(11)), at(DAY));
        alerts.update(PlanByHand.of(DAY.plusDays(1), List.of(leak), change(11)), at(DAY.plusDays(1)));
        assertThat(alerts.list(NORTH, EnumSet.of(AlertState.RAISED)))
                .extracting(Alert::rule)
                .containsExactlyInAnyOrder("SAFETY", "FAILS_SOONER");
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
