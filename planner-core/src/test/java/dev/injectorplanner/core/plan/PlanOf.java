package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.testkit.FleetBuilder;

/** Plans for tests: as the application plans, standard policy, Monday 2 March 2026. */
final class PlanOf {
    private PlanOf() {}

    static Plan fleet(FleetSnapshot fleet) {
        return new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(fleet, Policy.standard(), FleetBuilder.TODAY);
    }
}
