package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptPlans;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The plans in force, read from the store once each. */
public final class PlansInForce {
    private final KeptPlans plans;
    private final Map<String, KeptPlan> read = new ConcurrentHashMap<>();

    public PlansInForce(KeptPlans plans) {
        this.plans = plans;
    }

    /** The plan in force at a depot, its own or one of all depots; empty where none was kept. */
    public Optional<KeptPlan> find(String depot) {
        return plans.findInForceId(depot).flatMap(id -> {
            KeptPlan there = read.get(depot);
            if (there != null && there.id() == id) {
                return Optional.of(there);
            }
            Optional<KeptPlan> now = plans.find(id);
            now.ifPresent(plan -> read.put(depot, plan));
            return now;
        });
    }
}
