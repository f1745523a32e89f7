package dev.injectorplanner.core.plan;

import static dev.injectorplanner.core.testkit.FleetBuilder.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;
import org.junit.jupiter.api.Test;

/** What the records lack is said before anything is counted. */
class S01_RecordsLackTest {
    private static Plan plan(FleetBuilder fleet, int weeksLater) {
        return new Planner(new EarliestFit()).plan(fleet.build(), Policy.standard(), TODAY.plusWeeks(weeksLater));
    }

    @Test
    void trucks_without_injectors_are_not_forecast_and_that_is_said() {
        FleetBuilder fleet = new FleetBuilder()
                .truck("T1")
                .allInjectors("T1", 60_000)
                .truck("T2")
                .truck("T3")
                .injector("T3", 1, TODAY.minusYears(1), null);
        assertThat(plan(fleet, 0).records().sentences())
                .containsExactly(
                        "1 of 3 trucks is not forecast: no injectors on record (T2). Fix: load the table injectors; where"
                                + " nobody knows the day of fitting, enter \"before records\".",
                        "1 of 3 trucks is forecast in part: cylinders without an injector on record (T3).");
    }

    @Test
    void a_family_without_access_steps_is_named() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 60_000);
        fleet.access.clear();
        assertThat(plan(fleet, 0).records().sentences())
                .containsExactly(
                        "No access steps for V8: visits count no labour to reach the cylinders, and no coolant."
                                + " Fix: load the table access.");
    }

    @Test
    void a_truck_without_news_is_named_and_its_forecast_is_less_certain() {
        FleetBuilder fleet = new FleetBuilder().truck("T1").allInjectors("T1", 60_000);
        assertThat(plan(fleet, 4).records().sentences()).isEmpty();
        Plan silent = plan(fleet, 5);
        assertThat(silent.records().sentences())
                .containsExactly(
                        "No meter reading for more than 30 days: T1 since 2026-03-02. Their meters are estimated, so"
                                + " their forecasts are less certain. Fix: load their readings.");
        Plan read = new Planner(new EarliestFit())
                .plan(
                        fleet.reading("T1", TODAY.plusWeeks(5), 307_000.0, 6_100.0)
                                .build(),
                        Policy.standard(),
                        TODAY.plusWeeks(5));
        assertThat(read.records().sentences()).isEmpty();
        assertThat(silent.risks().get(0).age()).isEqualTo(read.risks().get(0).age());
        assertThat(silent.risks().get(0).chance12())
                .isGreaterThan(read.risks().get(0).chance12()); // a wider spread on a rising hazard
        assertThat(plan(fleet, 5).records().depots().get(0).staleDays()).isEqualTo(30);
        Plan patient = new Planner(new EarliestFit())
                .plan(fleet.build(), Policy.standard().withStaleReadingDays(60), TODAY.plusWeeks(5));
        assertThat(patient.records().sentences()).hasSize(0);
    }
}
