package dev.injectorplanner.app.digest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.EarliestFit;
import org.junit.jupiter.api.Test;

/** Mails say what the records lack before they count anything. */
class RecordsInLettersTest {
    @Test
    void work_list_and_order_list_name_trucks_without_injectors() {
        FleetSnapshot whole = DemoFleet.make().snapshot();
        String depot = depotOf(whole, "T010");
        FleetSnapshot fleet = without(whole, "T010");
        Plan plan = new Planner(new EarliestFit()).plan(fleet, Policy.standard(), DemoFleet.TODAY);
        Planned planned = new Planned(fleet, plan);
        String words = "RECORDS. 1 of ";
        assertThat(plan.visits()).anyMatch(visit -> visit.depot().equals(depot));
        var visit = plan.visits().stream()
                .filter(each -> each.depot().equals(depot))
                .findFirst()
                .orElseThrow();
        assertThat(WorkLetter.find(planned, depot, visit.week()).orElseThrow().letter().text())
                .contains(words, "is not forecast: no injectors on record (T010)");
        assertThat(OrderLetter.find(planned, depot).orElseThrow().letter().text())
                .contains(words, "is not forecast: no injectors on record (T010)");
    }

    private static String depotOf(FleetSnapshot fleet, String truck) {
        return fleet.trucks().stream()
                .filter(each -> each.truck().equals(truck))
                .findFirst()
                .orElseThrow()
                .depot();
    }

    private static FleetSnapshot without(FleetSnapshot fleet, String truck) {
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                fleet.trucks(),
                fleet.injectors().stream()
                        .filter(each -> !each.truck().equals(truck))
                        .toList(),
                fleet.readings(),
                fleet.faults(),
                fleet.cylinderTests(),
                fleet.parts(),
                fleet.jobParts(),
                fleet.stock(),
                fleet.purchaseLines(),
                fleet.away(),
                fleet.intervals(),
                fleet.rules(),
                fleet.shop());
    }
}
