package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.testkit.FleetBuilder;

/** Plans for tests: as the application plans, standard policy, Monday 2 March 2026. */
final class PlanOf {
    private PlanOf() {}

    static Plan fleet(FleetSnapshot fleet) {
        return held(fleet, Holds.none());
    }

    static Plan fleet(FleetSnapshot fleet, Policy policy) {
        return held(fleet, Holds.none(), policy);
    }

    static Plan held(FleetSnapshot fleet, Holds holds) {
        return held(fleet, holds, Policy.standard());
    }

    static Plan held(FleetSnapshot fleet, Holds holds, Policy policy) {
        return planner().plan(fleet, policy, FleetBuilder.TODAY, holds);
    }

    static Planner planner() {
        return new Planner(new ExactScheduler(SearchLimits.USUAL));
    }
}
