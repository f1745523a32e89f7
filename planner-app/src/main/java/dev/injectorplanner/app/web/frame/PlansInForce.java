package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.core.plan.PlanWords;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The plans in force, read from the store once each. */
public final class PlansInForce {
    private final KeptPlans plans;
    private final Map<String, KeptPlan> read = new ConcurrentHashMap<>();
    private final Map<String, Shown> shown = new ConcurrentHashMap<>();

    private record Shown(SiteUnits units, KeptPlan plan) {}

    public PlansInForce(KeptPlans plans) {
        this.plans = plans;
    }

    /** The same with its sentences in the site's units. */
    public Optional<KeptPlan> find(String depot, SiteUnits units) {
        return units.isMetric() ? find(depot) : find(depot).map(kept -> in(units, depot, kept));
    }

    private KeptPlan in(SiteUnits units, String depot, KeptPlan kept) {
        Shown there = shown.get(depot);
        if (there == null || there.plan().id() != kept.id() || !there.units().equals(units)) {
            there = new Shown(
                    units, new KeptPlan(kept.id(), kept.depot(), kept.keptAt(), PlanWords.in(units, kept.plan())));
            shown.put(depot, there);
        }
        return there.plan();
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
