package dev.injectorplanner.app.alert;

import static dev.injectorplanner.app.testkit.Database.NORTH;
import static dev.injectorplanner.app.testkit.Database.SOUTH;
import static dev.injectorplanner.app.testkit.PlanByHand.DAY;
import static dev.injectorplanner.app.testkit.PlanByHand.item;
import static dev.injectorplanner.app.testkit.PlanByHand.visit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.GivenUp;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.visit.Visit;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The life of an alert, on both databases. */
class AlertsTest {
    private static final DueItem FOUR_FAULTS = item("T-1", 1, "4 faults in 30 days", DAY.plusDays(3));
    private static final IsoWeek NEXT_WEEK = new IsoWeek(2026, 11);

    private Store store;
    private Alerts alerts;

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_finding_is_raised_once_however_often_it_is_found(Database database) {
        open(database);
        assertThat(plan(DAY, List.of(FOUR_FAULTS)).raised()).isEqualTo(1);
        Alert alert = only();
        assertThat(alert.state()).isEqualTo(AlertState.RAISED);
        assertThat(alert.evidence()).isEqualTo("4 faults in 30 days");
        assertThat(alert.limit()).isEqualTo("3 faults in 30 days");
        assertThat(alert.by()).isEqualTo(DAY.plusDays(3));
        AlertCounts again = plan(DAY, List.of(FOUR_FAULTS));
        assertThat(again).isEqualTo(new AlertCounts(0, 0, 0, 0, 0, 0, 1));
        assertThat(only()).isEqualTo(alert);
        assertThat(alerts.history(alert.id())).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void newer_evidence_takes_the_place_of_older_without_a_word(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        DueItem six = item("T-1", 1, "6 faults in 30 days", DAY.plusDays(1));
        assertThat(plan(DAY.plusDays(1), List.of(six)).refreshed()).isEqualTo(1);
        assertThat(only().evidence()).isEqualTo("6 faults in 30 days");
        assertThat(only().by()).isEqualTo(DAY.plusDays(1));
        assertThat(alerts.history(only().id())).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_visit_makes_it_planned_and_losing_the_visit_opens_it_again(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        assertThat(plan(DAY, List.of(FOUR_FAULTS), visit("T-1", NEXT_WEEK, FOUR_FAULTS))
                        .planned())
                .isEqualTo(1);
        assertThat(only().state()).isEqualTo(AlertState.PLANNED);
        assertThat(only().visitWeek()).isEqualTo(NEXT_WEEK);
        assertThat(plan(DAY.plusDays(1), List.of(FOUR_FAULTS)).unplanned()).isEqualTo(1);
        assertThat(only().state()).isEqualTo(AlertState.RAISED);
        assertThat(alerts.history(only().id()))
                .extracting(AlertEvent::who, AlertEvent::from, AlertEvent::to)
                .containsExactly(
                        tuple("plan", null, AlertState.RAISED),
                        tuple("plan", AlertState.RAISED, AlertState.PLANNED),
                        tuple("plan", AlertState.PLANNED, AlertState.RAISED));
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void looking_at_it_does_not_clear_it(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        alerts.seen(only().id(), "manager", at(DAY));
        plan(DAY.plusDays(1), List.of(FOUR_FAULTS));
        assertThat(only().state()).isEqualTo(AlertState.SEEN);
        assertThat(only().seenAt()).isEqualTo(at(DAY));
        alerts.seen(only().id(), "another", at(DAY.plusDays(2)));
        assertThat(only().seenAt()).as("the first who knew").isEqualTo(at(DAY));
        assertThat(alerts.history(only().id())).extracting(AlertEvent::who).contains("manager", "another");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_menu_counts_what_nobody_knows_of_where_one_may_look(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS, item("T-1", 2, "5 faults in 30 days", DAY)));
        GivenUp.tell(store.dataSource(), "backup", null, "disk full", at(DAY));
        assertThat(alerts.countRaised(null)).isEqualTo(3);
        assertThat(alerts.countRaised(NORTH)).isEqualTo(2);
        assertThat(alerts.countRaised("South")).isZero();
        alerts.seen(alerts.list(NORTH, Set.of(AlertState.RAISED)).get(0).id(), "manager", at(DAY));
        assertThat(alerts.countRaised(NORTH)).isEqualTo(1);
        assertThat(alerts.countRaised(null)).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_muted_one_is_silent_until_its_day_and_then_comes_back(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        alerts.mute(only().id(), DAY.plusDays(10), "sensor is being changed", "manager", at(DAY), DAY);
        DueItem seven = item("T-1", 1, "7 faults in 30 days", DAY);
        plan(DAY.plusDays(9), List.of(seven));
        assertThat(only().state()).isEqualTo(AlertState.MUTED);
        assertThat(only().evidence()).as("it knows, and keeps silent").isEqualTo("7 faults in 30 days");
        assertThat(alerts.listUntold(NORTH)).isEmpty();
        assertThat(plan(DAY.plusDays(10), List.of(seven)).back()).isEqualTo(1);
        assertThat(only().state()).isEqualTo(AlertState.RAISED);
        assertThat(only().mutedUntil()).isNull();
        assertThat(alerts.listUntold(NORTH)).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_muted_one_that_flickers_stays_muted(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        alerts.mute(only().id(), DAY.plusDays(10), "known", "manager", at(DAY), DAY);
        plan(DAY.plusDays(1), List.of());
        plan(DAY.plusDays(2), List.of(FOUR_FAULTS));
        assertThat(only().state()).isEqualTo(AlertState.MUTED);
        assertThat(plan(DAY.plusDays(10), List.of()).cleared()).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_new_injector_clears_it_even_while_muted_and_says_so(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        alerts.mute(only().id(), DAY.plusDays(30), "known", "manager", at(DAY), DAY);
        LocalDate later = DAY.plusDays(5);
        alerts.update(PlanByHand.of(withNewInjector(later), later.plusDays(1), List.of(), List.of()), at(later));
        assertThat(open()).isEmpty();
        Alert cleared = alerts.list(NORTH, EnumSet.of(AlertState.CLEARED)).get(0);
        assertThat(cleared.clearedWhy()).isEqualTo("injector replaced on " + later);
        assertThatThrownBy(() -> alerts.seen(cleared.id(), "manager", at(later)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("is cleared: injector replaced");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void one_that_went_by_itself_and_is_back_soon_is_the_old_one(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        long id = only().id();
        assertThat(plan(DAY.plusDays(1), List.of()).cleared()).isEqualTo(1);
        plan(DAY.plusDays(4), List.of(FOUR_FAULTS));
        assertThat(only().id()).isEqualTo(id);
        plan(DAY.plusDays(5), List.of());
        plan(DAY.plusDays(25), List.of(FOUR_FAULTS));
        assertThat(only().id()).as("after three weeks it is a new one").isNotEqualTo(id);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void of_two_findings_of_one_rule_the_more_pressing_counts(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS, item("T-1", 1, "5 faults", DAY.plusDays(1))));
        assertThat(only().by()).isEqualTo(DAY.plusDays(1));
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void an_alert_follows_its_truck_to_another_depot(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        long id = only().id();
        FleetSnapshot fleet = OneOfEach.fleet();
        alerts.update(PlanByHand.of(without(fleet), DAY.plusDays(1), List.of(), List.of()), at(DAY.plusDays(1)));
        assertThat(only().id())
                .as("the old depot does not know the truck any more")
                .isEqualTo(id);
        DueItem there = item(SOUTH, "T-1", 1, "4 faults in 30 days", DAY.plusDays(3));
        AlertCounts counts = new PlanUpdate(
                        new StoreSql(store.dataSource()),
                        PlanByHand.of(DAY.plusDays(1), List.of(there), List.of()),
                        SOUTH,
                        at(DAY.plusDays(1)))
                .run();
        assertThat(counts.raised()).isZero();
        assertThat(only().id()).isEqualTo(id);
        assertThat(only().depot()).isEqualTo(SOUTH);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_schema_keeps_one_open_alert_a_rule_and_whole_states(Database database) throws SQLException {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        Alert twin = only();
        Alert copy = AlertEdits.seen(twin, AlertState.SEEN, at(DAY));
        try (var connection = store.dataSource().getConnection();
                var statement = connection.createStatement()) {
            assertThatThrownBy(() -> AlertRows.insert(connection, List.of(renumbered(copy))))
                    .isInstanceOf(SQLException.class);
            for (String sql : List.of(
                    "update alert set state = 'CLEARED'",
                    "update alert set state = 'MUTED'",
                    "update alert set state = 'PLANNED'",
                    "update alert set state = 'GONE'",
                    "update alert set open_key = 7",
                    "update alert set truck = null")) {
                assertThatThrownBy(() -> statement.executeUpdate(sql)).as(sql).isInstanceOf(SQLException.class);
            }
        }
        assertThat(only()).isEqualTo(twin);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_job_that_keeps_failing_is_one_alert_until_it_goes_well(Database database) {
        open(database);
        GivenUp.tell(store.dataSource(), "nightly plan", NORTH, "the store\nwas away", at(DAY));
        GivenUp.tell(store.dataSource(), "nightly plan", NORTH, "still away", at(DAY.plusDays(1)));
        Alert alert = only();
        assertThat(alert.about()).isEqualTo("nightly plan, North");
        assertThat(alert.evidence()).isEqualTo("still away");
        plan(DAY, List.of());
        assertThat(only().state()).as("no plan clears it").isEqualTo(AlertState.RAISED);
        wentWell(SOUTH, at(DAY.plusDays(1)));
        assertThat(open()).hasSize(1);
        wentWell(NORTH, at(DAY.plusDays(2)));
        assertThat(open()).isEmpty();
        GivenUp.tell(store.dataSource(), "nightly plan", NORTH, "away again", at(DAY.plusDays(3)));
        assertThat(only().id()).isNotEqualTo(alert.id());
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void a_wrong_word_is_said_with_how_to_mend_it(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS));
        long id = only().id();
        assertThatThrownBy(() -> alerts.mute(id, DAY, "later", "manager", at(DAY), DAY))
                .hasMessage("until \"2026-03-02\": is not after 2026-03-02. Fix: name a later day.");
        assertThatThrownBy(() -> alerts.mute(id, DAY.plusDays(1), " ", "manager", at(DAY), DAY))
                .hasMessage("why \"\": is empty. Fix: enter why it may wait.");
        assertThatThrownBy(() -> alerts.seen(-1, "manager", at(DAY)))
                .hasMessage("alert \"-1\": is not known. Fix: use a number from the list of alerts.");
        assertThat(only().state()).isEqualTo(AlertState.RAISED);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void more_than_a_block_of_them_is_no_different(Database database) {
        open(database);
        List<DueItem> many = new ArrayList<>();
        for (int cylinder = 1; cylinder <= 2_500; cylinder++) {
            many.add(item("T-1", cylinder, "fault", DAY));
        }
        assertThat(plan(DAY, many).raised()).isEqualTo(2_500);
        assertThat(plan(DAY, many).unchanged()).isEqualTo(2_500);
        assertThat(plan(DAY, many.subList(0, 100)).cleared()).isEqualTo(2_400);
        assertThat(open()).hasSize(100);
    }

    /** As two nodes do: one holds it against a plan while the other tells it, or a person says something of it. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void what_was_told_seen_or_muted_meanwhile_is_not_overwritten(Database database) {
        open(database);
        plan(DAY, List.of(FOUR_FAULTS), visit("T-1", NEXT_WEEK, FOUR_FAULTS));
        StoreSql sql = new StoreSql(store.dataSource());
        Alert read = only();
        sql.inTransaction(connection -> {
            Alerts.markTold(connection, List.of(read));
            return true;
        });
        assertThat(overwrites(sql, read)).as("told").isFalse();
        Alert told = only();
        alerts.seen(told.id(), "manager", at(DAY));
        assertThat(overwrites(sql, told)).as("seen").isFalse();
        alerts.mute(told.id(), DAY.plusDays(3), "known", "manager", at(DAY), DAY);
        Alert muted = only();
        alerts.mute(told.id(), DAY.plusDays(9), "for longer", "manager", at(DAY), DAY);
        assertThat(overwrites(sql, muted)).as("muted").isFalse();
        assertThat(only().mutedUntil()).isEqualTo(DAY.plusDays(9));
        assertThat(only().seenAt()).isEqualTo(at(DAY));
        assertThat(only().told()).isEqualTo(AlertState.PLANNED);
        assertThat(overwrites(sql, only())).as("as it stands").isTrue();
    }

    private static boolean overwrites(StoreSql sql, Alert read) {
        return sql.inTransaction(connection -> AlertRows.update(connection, List.of(read), List.of(read))[0]);
    }

    private void open(Database database) {
        store = database.empty();
        alerts = new Alerts(store.dataSource());
    }

    private AlertCounts plan(LocalDate today, List<DueItem> dueItems, Visit... visits) {
        return alerts.update(PlanByHand.of(today, dueItems, List.of(visits)), at(today));
    }

    private List<Alert> open() {
        return alerts.list(null, EnumSet.complementOf(EnumSet.of(AlertState.CLEARED)));
    }

    private void wentWell(String depot, Instant at) {
        new StoreSql(store.dataSource()).inTransaction(connection -> {
            Alerts.jobWentWell(connection, "nightly plan", depot, at);
            return true;
        });
    }

    private Alert only() {
        assertThat(open()).hasSize(1);
        return open().get(0);
    }

    private static Instant at(LocalDate day) {
        return day.atTime(2, 0).toInstant(ZoneOffset.UTC);
    }

    private static Alert renumbered(Alert alert) {
        return new Alert(
                alert.id() + 500,
                alert.depot(),
                alert.truck(),
                alert.cylinder(),
                alert.rule(),
                alert.subject(),
                alert.state(),
                alert.action(),
                alert.evidence(),
                alert.limit(),
                alert.limitSource(),
                alert.by(),
                null,
                alert.raisedAt(),
                alert.seenAt(),
                null,
                null,
                null,
                null,
                null);
    }

    private static FleetSnapshot withNewInjector(LocalDate fittedOn) {
        FleetSnapshot fleet = OneOfEach.fleet();
        List<FittedInjector> injectors = new ArrayList<>();
        injectors.add(new FittedInjector(
                "T-1", 1, "INJ-4R", "S9", null, Origin.REMAN, fittedOn, null, null, null, null, null, null));
        return copy(fleet, injectors, true);
    }

    private static FleetSnapshot without(FleetSnapshot fleet) {
        return copy(fleet, fleet.injectors(), false);
    }

    private static FleetSnapshot copy(FleetSnapshot fleet, List<FittedInjector> injectors, boolean trucks) {
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                trucks ? fleet.trucks() : List.of(),
                trucks ? injectors : List.of(),
                List.of(),
                List.of(),
                List.of(),
                fleet.parts(),
                fleet.jobParts(),
                fleet.stock(),
                fleet.purchaseLines(),
                List.of(),
                fleet.intervals(),
                fleet.rules());
    }
}
