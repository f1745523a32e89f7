package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.schedule.EarliestFit;
import dev.injectorplanner.core.testkit.FleetBuilder;

/** Plans for tests: earliest fit, standard policy, Monday 2 March 2026. */
final class PlanOf {
    private PlanOf() {}

    static Plan fleet(FleetSnapshot fleet) {
        return new Planner(new EarliestFit()).plan(fleet, Policy.standard(), FleetBuilder.TODAY);
    }
}
