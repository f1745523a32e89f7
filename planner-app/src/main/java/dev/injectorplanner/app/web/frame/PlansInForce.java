package dev.injectorplanner.app.web.frame;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.core.plan.PlanWords;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The plans in force, read from the store once each: one of all depots once for all of them. Copies take a share of the
 * memory at most, and are dropped once no depot's plan is the one copied.
 */
public final class PlansInForce {
    private final KeptPlans plans;
    private final Cache<Key, Optional<KeptPlan>> read = Caffeine.newBuilder()
            .maximumWeight(MemoryShare.kilobytes())
            .weigher((Key key, Optional<KeptPlan> kept) ->
                    kept.map(found -> MemoryShare.kilobytesOf(found.plan())).orElse(1))
            .build();

    private final Map<String, Long> shown = new ConcurrentHashMap<>();

    private record Key(long id, SiteUnits units) {}

    public PlansInForce(KeptPlans plans) {
        this.plans = plans;
    }

    /** The same with its sentences in the site's units. */
    public Optional<KeptPlan> find(String depot, SiteUnits units) {
        return inForce(depot).flatMap(id -> units.isMetric() ? written(id) : in(units, id));
    }

    /** The plan in force at a depot, its own or one of all depots; empty where none was kept. */
    public Optional<KeptPlan> find(String depot) {
        return inForce(depot).flatMap(this::written);
    }

    /** How many plans are at hand, each form of units counted. */
    int copies() {
        read.cleanUp();
        return read.asMap().size();
    }

    private Optional<Long> inForce(String depot) {
        Optional<Long> found = plans.findInForceId(depot);
        found.ifPresent(id -> {
            Long before = shown.merge(depot, id, Math::max); // a slower reader may come with an earlier plan
            if (before != null) {
                read.asMap().keySet().removeIf(key -> !shown.containsValue(key.id()));
            }
        });
        return found;
    }

    private Optional<KeptPlan> in(SiteUnits units, long id) {
        Optional<KeptPlan> written =
                written(id); // not within the other's making: a cache must not be asked from inside
        return read.get(
                new Key(id, units),
                key -> written.map(kept ->
                        new KeptPlan(kept.id(), kept.depot(), kept.keptAt(), PlanWords.in(units, kept.plan()))));
    }

    /** What cannot be read is remembered too: trying costs a second. */
    private Optional<KeptPlan> written(long id) {
        return read.get(new Key(id, SiteUnits.METRIC), key -> plans.find(id));
    }
}
