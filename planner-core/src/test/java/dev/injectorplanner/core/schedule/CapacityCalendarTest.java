package dev.injectorplanner.core.schedule;

import static dev.injectorplanner.core.testkit.FleetBuilder.NORTH;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** North: two bays, 16 h a day, Monday to Friday, 8 h overtime a week. */
class CapacityCalendarTest {
    private final FleetBuilder fleet =
            new FleetBuilder().truck("T1", "haul").truck("T2", "haul").truck("T3", "haul");

    CapacityCalendarTest() {
        fleet.dutyGroups.add(new DutyGroup("haul", 2, BigDecimal.TEN));
    }

    private CapacityCalendar calendar(LocalDate today) {
        return new CapacityCalendar(new FleetIndex(fleet.build()), today, 3);
    }

    @Test
    void aPlainWeek() {
        WeekCapacity week = calendar(TODAY).depotCapacity().get(1);
        assertThat(week).isEqualTo(new WeekCapacity(NORTH, 1, 80, 8, 30, 10));
    }

    /** On Thursday two of five days are left. */
    @Test
    void onlyTheDaysLeftOfThisWeekCount() {
        WeekCapacity week = calendar(TODAY.plusDays(3)).depotCapacity().get(0);
        assertThat(week.labourHours()).isEqualTo(32);
        assertThat(week.bayDays()).isEqualTo(4);
        assertThat(week.overtimeHours()).isCloseTo(3.2, within(1e-9));
    }

    @Test
    void holidaysAndExtraDays() {
        fleet.capacity.add(new CapacityOverride(NORTH, TODAY, 0, 0));
        fleet.capacity.add(new CapacityOverride(NORTH, TODAY.plusDays(5), 6, 1));
        WeekCapacity week = calendar(TODAY).depotCapacity().get(0);
        assertThat(week.labourHours()).isEqualTo(4 * 16 + 6);
        assertThat(week.bayDays()).isEqualTo(4 * 2 + 1);
    }

    @Test
    void trucksAboveTheMinimumForEachDayThatTheDepotWorks() {
        assertThat(calendar(TODAY).groupCapacity().get(0)).isEqualTo(new GroupCapacity("haul", 0, 5));
        assertThat(calendar(TODAY.plusDays(4)).groupCapacity().get(0).truckDays())
                .isEqualTo(1);
    }

    @Test
    void aGroupBelowItsMinimumSparesNone() {
        fleet.dutyGroups.clear();
        fleet.dutyGroups.add(new DutyGroup("haul", 9, BigDecimal.TEN));
        assertThat(calendar(TODAY).groupCapacity().get(0).truckDays()).isZero();
    }

    @Test
    void daysAwayAreNotFree() {
        fleet.away.add(new AwayWindow("T1", TODAY.plusDays(1), TODAY.plusDays(8), "harvest"));
        CapacityCalendar calendar = calendar(TODAY);
        assertThat(calendar.daysFree(fleet.trucks.get(0), 0)).isEqualTo(1);
        assertThat(calendar.daysFree(fleet.trucks.get(0), 1)).isEqualTo(3);
        assertThat(calendar.daysFree(fleet.trucks.get(1), 0)).isEqualTo(5);
    }
}
