package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What trying a pin, a refusal or more hours takes for one depot of 250 trucks, beside the gap it stops at. */
@Tag("benchmark")
class WhatIfBenchmark {
    private static final FleetSnapshot DEPOT =
            new FleetGenerator(DemoFleet.ofSize(250, 3)).generate().snapshot();

    private final Planner planner = new Planner(new ExactScheduler(SearchLimits.USUAL));
    private final Planner quick = new Planner(new ExactScheduler(SearchLimits.QUICK));

    @Test
    void changesOfOneDepot() {
        long start = System.nanoTime();
        PreparedFleet fleet = planner.prepare(DEPOT, Policy.standard(), DemoFleet.TODAY);
        PreparedFleet.Trial base = planner.tryOut(fleet, Holds.none(), List.of());
        Plan plan = planner.tell(base);
        System.out.printf(
                Locale.ROOT,
                "%n250 trucks, first plan: %.2f s, cost %,.0f, gap %.3f %%%n%-10s %8s %10s %8s %8s %10s%n",
                (System.nanoTime() - start) / 1e9,
                plan.cost().cost(),
                100 * plan.cost().gap(),
                "tried",
                "seconds",
                "cost",
                "hours",
                "visits",
                "gap %");
        Visit first = plan.visits().get(0);
        IsoWeek later = first.week().plus(3);
        String depot = DEPOT.depots().get(0).depot();
        print(fleet, base, "pin", new Holds(Map.of(first.truck(), later), Map.of(), Map.of()), List.of());
        print(fleet, base, "refuse", new Holds(Map.of(), Map.of(first.truck(), Set.of()), Map.of()), List.of());
        print(fleet, base, "hours", Holds.none(), List.of(new ExtraCapacity(depot, first.week(), 40, 0)));
        print(fleet, base, "bays", Holds.none(), List.of(new ExtraCapacity(depot, first.week(), 0, 2)));
    }

    private void print(
            PreparedFleet fleet, PreparedFleet.Trial base, String what, Holds holds, List<ExtraCapacity> extra) {
        long start = System.nanoTime();
        PlanChange change = fleet.change(base, quick.tryOut(fleet, holds, extra, base));
        System.out.printf(
                Locale.ROOT,
                "%-10s %8.2f %10.0f %8.1f %8d %10.3f%n",
                what,
                (System.nanoTime() - start) / 1e9,
                change.cost(),
                change.hours(),
                change.visits().size(),
                100 * change.gap());
    }
}
