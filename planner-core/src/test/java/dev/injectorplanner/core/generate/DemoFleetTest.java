package dev.injectorplanner.core.generate;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The demo shows what it is meant to show. */
class DemoFleetTest {
    private static final FleetSnapshot FLEET = DemoFleet.make().snapshot();
    private static final Plan PLAN =
            new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(FLEET, Policy.standard(), DemoFleet.TODAY);

    @Test
    void threeDepotsSixtyTrucksThreeFamilies() {
        assertThat(DemoFleet.TODAY.getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        assertThat(FLEET.depots()).hasSize(3);
        assertThat(FLEET.trucks()).hasSize(60);
        assertThat(FLEET.engineFamilies()).extracting(EngineFamily::cylinders).containsExactlyInAnyOrder(8, 6, 4);
    }

    @Test
    void aMeterWasReplacedAndNothingIsFlagged() {
        assertThat(FLEET.readings()).filteredOn(Reading::meterReplaced).isNotEmpty();
        assertThat(PLAN.assumptions()).noneMatch(row -> row.topic().equals("meter readings"));
    }

    @Test
    void dozensOfFindingsOfManyKinds() {
        assertThat(PLAN.dueItems()).hasSizeGreaterThan(60);
        assertThat(PLAN.dueItems())
                .extracting(DueItem::kind)
                .contains(
                        DueKind.DISTANCE_KM,
                        DueKind.ENGINE_HOURS,
                        DueKind.INSPECTION,
                        DueKind.RETURN_FLOW,
                        DueKind.WARRANTY,
                        DueKind.INTERVAL);
    }

    @Test
    void visitsOverManyWeeksAndOneDepotOnOvertime() {
        assertThat(PLAN.visits().stream().map(visit -> visit.week()).distinct().count())
                .isGreaterThan(8);
        assertThat(PLAN.loads()).anyMatch(load -> load.depot().equals("Brennick") && load.overtimeHours() > 0);
    }

    @Test
    void aFewPartsAreShort() {
        assertThat(PLAN.partNeeds().stream().filter(need -> need.missing() > 0).count())
                .isBetween(1L, 20L);
    }

    @Test
    void oneTruckIsNotPlacedBecauseItIsOnHire() {
        assertThat(PLAN.unplanned())
                .filteredOn(row -> row.reason().contains("on hire abroad"))
                .singleElement()
                .satisfies(row -> assertThat(row.dueItems()).isNotEmpty());
    }

    @Test
    void rearCylindersOfTheV8TakeLonger() {
        assertThat(FLEET.access())
                .filteredOn(step -> step.family().equals(MadeUpEngines.V8)
                        && step.cylinders().equals(List.of(7, 8)))
                .isNotEmpty();
    }
}
