package dev.injectorplanner.core.cores;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.testkit.FleetBuilder;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The injector's core: deposit 120, 60 days. T1 has been in service since 2020-01-10. */
class CoresOwedTest {
    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private void fitted(int cylinder, Origin origin, LocalDate on, LocalDate removed, String serial) {
        Found found = removed == null ? null : Found.WORN;
        fleet.injectors.add(new FittedInjector(
                "T1", cylinder, INJECTOR, serial, null, origin, on, null, null, removed, null, null, found));
    }

    private List<CoreOwed> cores() {
        return CoresOwed.of(new FleetIndex(fleet.build()), TODAY);
    }

    @Test
    void eachRemanFittedOwesTheUnitThatCameOut() {
        LocalDate day = TODAY.minusDays(20);
        fitted(3, Origin.NEW, LocalDate.of(2020, 1, 10), day, "OLD-1");
        fitted(3, Origin.REMAN, day, null, "R-1");
        assertThat(cores()).singleElement().satisfies(core -> {
            assertThat(core.cylinder()).isEqualTo(3);
            assertThat(core.oldSerial()).isEqualTo("OLD-1");
            assertThat(core.deposit()).isEqualByComparingTo("120");
            assertThat(core.lastDay()).isEqualTo(day.plusDays(60));
            assertThat(core.daysLeft()).isEqualTo(40);
            assertThat(core.state()).isEqualTo(CoreState.OPEN);
        });
    }

    @Test
    void newOnesAndThoseTheTruckCameWithOweNothing() {
        fitted(1, Origin.NEW, TODAY.minusDays(5), null, null);
        fleet.trucks.clear();
        fleet.readings.clear();
        fleet.truck("T1");
        fitted(2, Origin.REMAN, LocalDate.of(2020, 1, 10), null, null);
        fitted(4, Origin.REMAN, TODAY.plusDays(1), null, null);
        assertThat(cores()).isEmpty();
    }

    @Test
    void remindedInTimeAndShownForAMonthAfter() {
        fitted(1, Origin.REMAN, TODAY.minusDays(60 - 15), null, null);
        fitted(2, Origin.REMAN, TODAY.minusDays(60 - 14), null, null);
        fitted(3, Origin.REMAN, TODAY.minusDays(60), null, null);
        fitted(4, Origin.REMAN, TODAY.minusDays(61), null, null);
        fitted(5, Origin.REMAN, TODAY.minusDays(90), null, null);
        fitted(6, Origin.REMAN, TODAY.minusDays(91), null, null);
        assertThat(cores()).extracting(CoreOwed::cylinder).containsExactly(5, 4, 3, 2, 1);
        assertThat(cores())
                .extracting(CoreOwed::state)
                .containsExactly(
                        CoreState.PAST, CoreState.PAST, CoreState.SEND_NOW, CoreState.SEND_NOW, CoreState.OPEN);
    }
}
