package dev.injectorplanner.app.planning;

import dev.injectorplanner.app.plans.KeptPlans;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.plan.AccessLabourShares;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.PreparedFleet;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a plan learns from beyond the trucks it plans: a depot's plan from the injectors of the whole fleet, and every plan
 * from the access labour that visits of earlier days' plans paid.
 */
final class FleetLearning {
    /** Days of plans whose visits tell what access labour a cylinder bears. */
    private static final int DAYS = 4;

    private final Store store;
    private final Planner planner;
    private final KeptPlans plans;
    private @Nullable Learned newest;

    FleetLearning(Store store, Planner planner, KeptPlans plans) {
        this.store = store;
        this.planner = planner;
        this.plans = plans;
    }

    /** What lives are learned from: a day, the newest injector's number, and what the site says of readings, defects and limits. */
    record Basis(LocalDate day, long newestInjector, int usageDays, DefectDefaults defects, Set<Rule> rules) {
        static Basis of(LocalDate day, long newestInjector, Policy policy, List<Rule> rules) {
            return new Basis(day, newestInjector, policy.usageWindowDays(), policy.defects(), Set.copyOf(rules));
        }
    }

    private record Learned(Basis basis, FleetLives lives) {}

    /** The fleet learned and priced. */
    PreparedFleet prepare(FleetSnapshot fleet, Policy policy, LocalDate today, @Nullable String depot) {
        Policy paid = withPaidAccess(policy, fleet, today, depot);
        return depot == null || store.countDepots() == 1
                ? planner.prepare(fleet, paid, today)
                : planner.prepare(fleet, paid, today, lives(fleet.rules(), paid, today));
    }

    /** Families that no earlier plan has touched keep the first run's share. */
    private Policy withPaidAccess(Policy policy, FleetSnapshot fleet, LocalDate today, @Nullable String depot) {
        List<Visit> visits = plans.listEarlier(depot, today, DAYS).stream()
                .map(Plan::visits)
                .flatMap(List::stream)
                .toList();
        return visits.isEmpty() ? policy : policy.withAccessShareHours(AccessLabourShares.of(fleet, visits));
    }

    /** Learned once a day, and again when injectors were fitted or the site set other figures or limits for it. */
    private synchronized FleetLives lives(List<Rule> rules, Policy policy, LocalDate today) {
        Basis basis = Basis.of(today, store.newestInjector(), policy, rules);
        Learned there = newest;
        if (there == null || !there.basis().equals(basis)) {
            there = new Learned(basis, planner.learnLives(store.snapshot(), policy, today));
            newest = there;
        }
        return there.lives();
    }
}
