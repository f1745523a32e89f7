package dev.injectorplanner.core.history;

import static dev.injectorplanner.core.testkit.FleetBuilder.INJECTOR;
import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.testkit.FleetBuilder;
import dev.injectorplanner.core.usage.FleetUsage;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/**
 * Truck T1 has readings of the last 60 weeks: 216,000 km on 2025-01-06, 1,400 km and 20 h a week, 300,000 km today. Its
 * records begin the day after the first reading, at 216,200 km.
 */
class D01_LifeHistoryTest {
    private final FleetBuilder fleet = new FleetBuilder().truck("T1");

    private LifeHistory history() {
        FleetIndex index = new FleetIndex(fleet.build());
        return new LifeHistory(index, new FleetUsage(index, 365, TODAY), TODAY);
    }

    private void removed(int cylinder, LocalDate fitted, double fittedKm, LocalDate out, double outKm, Found found) {
        fleet.injectors.add(new FittedInjector(
                "T1", cylinder, INJECTOR, null, null, Origin.NEW, fitted, fittedKm, null, out, outKm, null, found));
    }

    @Test
    void oneThatWasInBeforeTheRecordsEntersAtItsAgeThen() {
        fleet.injector("T1", 1, LocalDate.of(2023, 1, 9), 100_000.0);
        UnitLife unit = history().units().get(0);
        assertThat(unit.observedFrom()).isEqualTo(LocalDate.of(2025, 1, 7));
        assertThat(unit.end()).isEqualTo(LifeEnd.IN_SERVICE);
        assertThat(unit.km().entry()).isCloseTo(116_200, within(1.0));
        assertThat(unit.km().exit()).isCloseTo(200_000, within(1.0));
    }

    @Test
    void oneFittedWithinTheRecordsEntersAtZero() {
        removed(2, TODAY.minusWeeks(40), 244_000, TODAY.minusWeeks(10), 286_000, Found.FAILED);
        UnitLife unit = history().units().get(0);
        assertThat(unit.km()).isEqualTo(new Span(0, 42_000));
        assertThat(unit.end()).isEqualTo(LifeEnd.FAILED);
        assertThat(unit.failedOrWould()).isTrue();
    }

    @Test
    void hoursComeFromTheReadingsWhereNobodyNotedThem() {
        removed(2, TODAY.minusWeeks(40), 244_000, TODAY.minusWeeks(10), 286_000, Found.HEALTHY);
        assertThat(history().units().get(0).hours().exit()).isCloseTo(600, within(1e-6));
    }

    @Test
    void oneThatCameOutBeforeTheRecordsIsLeftOutAndCounted() {
        removed(3, LocalDate.of(2022, 1, 3), 20_000, LocalDate.of(2024, 6, 3), 180_000, Found.FAILED);
        LifeHistory history = history();
        assertThat(history.units()).isEmpty();
        assertThat(history.beforeRecords()).isEqualTo(1);
    }

    @Test
    void aRemovalAfterTodayIsNotKnownYet() {
        removed(4, TODAY.minusWeeks(20), 272_000, TODAY.plusWeeks(2), 302_800, Found.FAILED);
        UnitLife unit = history().units().get(0);
        assertThat(unit.end()).isEqualTo(LifeEnd.IN_SERVICE);
        assertThat(unit.km().exit()).isCloseTo(28_000, within(1e-6));
    }

    @Test
    void fittedTodayHasNoAgeAndIsLeftOut() {
        fleet.injector("T1", 5, TODAY, 300_000.0);
        LifeHistory history = history();
        assertThat(history.units()).isEmpty();
        assertThat(history.withoutAge()).isEqualTo(1);
    }

    @Test
    void agesWithinALifeFollowTheMeter() {
        removed(2, TODAY.minusWeeks(40), 244_000, TODAY.minusWeeks(10), 286_000, Found.WORN);
        LifeHistory history = history();
        UnitLife unit = history.units().get(0);
        assertThat(history.ageOn(unit, TODAY.minusWeeks(30), Clock.DISTANCE)).isCloseTo(14_000, within(1.0));
        assertThat(history.ageOn(unit, TODAY.minusWeeks(30), Clock.HOURS)).isCloseTo(200, within(0.1));
    }
}
