package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.DepotPart;
import java.util.Optional;

/** The plans in force with the fleet they are of: what letters speak of. */
public final class CurrentPlans {
    private final Planning planning;
    private final KeptPlans plans;

    public CurrentPlans(Planning planning, KeptPlans plans) {
        this.planning = planning;
        this.plans = plans;
    }

    /** A depot's part of the plan in force, with its trucks as they are now; empty where none was kept yet. */
    Optional<Planned> find(String depot) {
        return plans.findInForce(depot).map(kept -> {
            FleetSnapshot fleet = planning.fleet(depot);
            return new Planned(fleet, DepotPart.of(kept.plan(), fleet, depot));
        });
    }
}
