package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every store must hold to, whatever database is below. */
abstract class StoreContract {
    private Store store;

    abstract Store openEmpty() throws Exception;

    /** The same store again, after it was closed. */
    abstract Store reopen();

    @BeforeEach
    void open() throws Exception {
        store = openEmpty();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void a_fleet_comes_back_as_it_went_in() {
        assertThat(merge(OneOfEach.fleet())).containsOnly(Change.ADDED);
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void a_fleet_outlives_a_restart() {
        merge(OneOfEach.fleet());
        store.close();
        store = reopen();
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void the_same_fleet_again_changes_nothing() {
        merge(OneOfEach.fleet());
        assertThat(merge(OneOfEach.fleet())).containsOnly(Change.UNCHANGED);
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void a_depot_comes_with_its_own_trucks_only() {
        merge(OneOfEach.fleet());
        assertThat(store.findSnapshot("North")).hasValue(OneOfEach.fleet());
        assertThat(store.findSnapshot("South")).isEmpty();
    }

    @Test
    void a_duty_group_asks_a_depot_only_for_what_the_others_leave_open() {
        merge(OneOfEach.fleet());
        try (StoreWriter writer = store.writer()) {
            Depot north = OneOfEach.fleet().depots().get(0);
            Truck first = OneOfEach.fleet().trucks().get(0);
            writer.merge(
                    Depot.class,
                    List.of(new Depot(
                            "South",
                            "South yard",
                            north.timeZone(),
                            1,
                            8,
                            north.workDays(),
                            BigDecimal.TEN,
                            BigDecimal.TEN,
                            0)),
                    true);
            writer.merge(
                    Truck.class,
                    List.of(new Truck(
                            "T-9",
                            new Vin("WDB12345678901299"),
                            "South",
                            "Four",
                            "long haul",
                            first.inServiceOn(),
                            null,
                            null)),
                    true);
            writer.commit();
        }
        assertThat(store.findSnapshot("North").orElseThrow().dutyGroups().get(0).minimumOnRoad())
                .isZero();
        assertThat(store.snapshot().dutyGroups().get(0).minimumOnRoad()).isEqualTo(1);
    }

    @Test
    void what_was_not_committed_is_gone() {
        merge(OneOfEach.fleet());
        try (StoreWriter writer = store.writer()) {
            writer.merge(DutyGroup.class, List.of(new DutyGroup("short haul", 2, BigDecimal.TEN)), true);
            writer.rollback();
            assertThat(writer.all(DutyGroup.class)).hasSize(1);
        }
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    @Test
    void only_finding_out_writes_nothing() {
        try (StoreWriter writer = store.writer()) {
            assertThat(writer.merge(DutyGroup.class, OneOfEach.fleet().dutyGroups(), false))
                    .containsExactly(Change.ADDED);
            writer.commit();
        }
        assertThat(store.snapshot().dutyGroups()).isEmpty();
    }

    @Test
    void a_reading_before_the_latest_stored_one_is_found_again() {
        merge(OneOfEach.fleet());
        Reading early = new Reading("T-1", OneOfEach.MOMENT.minusSeconds(60), 100.0, null, false);
        Reading changed = new Reading("T-1", OneOfEach.MOMENT, 123_457.0, null, false);
        try (StoreWriter writer = store.writer()) {
            assertThat(writer.merge(Reading.class, List.of(early, changed, early), true))
                    .containsExactly(Change.ADDED, Change.CHANGED, Change.UNCHANGED);
            assertThat(writer.findReadingBefore("T-1", OneOfEach.MOMENT)).hasValue(early);
            writer.commit();
        }
        assertThat(store.snapshot().readings()).contains(early, changed).hasSize(3);
    }

    @Test
    void a_removal_makes_room_in_the_same_batch() {
        merge(OneOfEach.fleet());
        FittedInjector open = OneOfEach.fleet().injectors().stream()
                .filter(row -> row.cylinder() == 1 && row.removedOn() == null)
                .findFirst()
                .orElseThrow();
        FittedInjector next = new FittedInjector(
                "T-1", 1, "INJ-4R", "S2", null, Origin.REMAN, OneOfEach.DAY, null, null, null, null, null, null);
        FittedInjector closed = new FittedInjector(
                open.truck(),
                1,
                open.part(),
                null,
                null,
                open.origin(),
                open.fittedOn(),
                null,
                null,
                OneOfEach.DAY,
                null,
                null,
                null,
                open.fitting());
        try (StoreWriter writer = store.writer()) {
            assertThat(writer.merge(FittedInjector.class, List.of(next, closed), true))
                    .containsExactly(Change.ADDED, Change.CHANGED);
            writer.commit();
        }
        assertThat(store.snapshot().injectors()).contains(next, closed).hasSize(5);
    }

    /** Rules of the schema itself, whoever writes. */
    @Test
    void the_schema_refuses_what_does_not_fit() throws SQLException {
        merge(OneOfEach.fleet());
        List<String> wrong = List.of(
                "insert into stock (id, depot, part, on_hand) values (1, 'Nowhere', 'SEAL-1', 1)",
                "insert into stock (id, depot, part, on_hand) values (-1, 'North', 'SEAL-1', 1)",
                "update stock set on_hand = -1",
                "update engine_family set glycol_percent = 101",
                "update injector set removed_on = null, removed_odometer_km = null, removed_engine_hours = null,"
                        + " found = null, removed_key = date '9999-12-31', in_key = ''",
                "update injector set in_key = '' where removed_on is not null",
                "update injector set fitting = 0",
                "update injector set origin = 'FOUND'",
                "update job_part set task = 'no such task', step_key = 'no such task' where task is not null",
                "update failure_answer set answer = 'MAYBE'",
                "update injector set fitted_on = date '2030-01-01' where removed_on is not null",
                "update truck set vin = '1M8GDM9AXKP042788'",
                "update job_part set step = 'no such step', step_key = 'no such step' where step is not null",
                "update reading set odometer_km = null, engine_hours = null",
                "delete from depot");
        try (Connection connection = store.dataSource().getConnection();
                var statement = connection.createStatement()) {
            for (String sql : wrong) {
                assertThatThrownBy(() -> statement.executeUpdate(sql)).as(sql).isInstanceOf(SQLException.class);
            }
        }
        assertThat(store.snapshot()).isEqualTo(OneOfEach.fleet());
    }

    private List<Change> merge(FleetSnapshot fleet) {
        try (StoreWriter writer = store.writer()) {
            List<Change> changes = FleetMerge.into(writer, fleet);
            writer.commit();
            return changes;
        }
    }
}
