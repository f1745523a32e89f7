package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.PreparedFleet;
import dev.injectorplanner.core.plan.SetUpShares;
import dev.injectorplanner.core.risk.DefectDefaults;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan learns from beyond the trucks it plans: a depot's plan from the injectors of the whole fleet, and every plan
 * from the set-up that visits of earlier days' plans paid.
 */
final class Learning {
    /** Days of plans whose visits tell what set-up a cylinder bears. */
    private static final int DAYS = 4;

    private final Store store;
    private final Planner planner;
    private final KeptPlans plans;
    private @Nullable Learned newest;

    Learning(Store store, Planner planner, KeptPlans plans) {
        this.store = store;
        this.planner = planner;
        this.plans = plans;
    }

    /** Lives learned on a day, when the newest injector had that number, by what the site says of readings and defects. */
    private record Learned(
            LocalDate day, long newestInjector, int usageDays, DefectDefaults defects, FleetLives lives) {
        boolean holds(LocalDate on, long injector, Policy policy) {
            return day.equals(on)
                    && newestInjector == injector
                    && usageDays == policy.usageWindowDays()
                    && defects.equals(policy.defects());
        }
    }

    /** The fleet learned and priced. */
    PreparedFleet prepare(FleetSnapshot fleet, Policy policy, LocalDate today, @Nullable String depot) {
        Policy paid = withPaidSetUp(policy, fleet, today, depot);
        return depot == null || store.countDepots() == 1
                ? planner.prepare(fleet, paid, today)
                : planner.prepare(fleet, paid, today, lives(paid, today));
    }

    /** Families that no earlier plan has touched keep the first run's share. */
    private Policy withPaidSetUp(Policy policy, FleetSnapshot fleet, LocalDate today, @Nullable String depot) {
        List<Visit> visits = plans.listEarlier(depot, today, DAYS).stream()
                .map(Plan::visits)
                .flatMap(List::stream)
                .toList();
        return visits.isEmpty() ? policy : policy.withSetUpShareHours(SetUpShares.of(fleet, visits));
    }

    /** Learned once a day, and again when injectors were fitted or the site set other figures for it. */
    private synchronized FleetLives lives(Policy policy, LocalDate today) {
        long injector = store.newestInjector();
        Learned there = newest;
        if (there == null || !there.holds(today, injector, policy)) {
            there = new Learned(
                    today,
                    injector,
                    policy.usageWindowDays(),
                    policy.defects(),
                    planner.learnLives(store.snapshot(), policy, today));
            newest = there;
        }
        return there.lives();
    }
}
