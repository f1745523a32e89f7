package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The plan of a large fleet: time and memory beside its cost and gap; and what keeping more sets of cylinders a truck and
 * week is worth. {@code -Dplanner.fleet=10000} for the reference fleet.
 */
@Tag("benchmark")
class ReferenceFleetBenchmark {
    private static final int TRUCKS = Integer.getInteger("planner.fleet", 1_000);
    private static final FleetSnapshot FLEET =
            new FleetGenerator(DemoFleet.ofSize(TRUCKS, 1)).generate().snapshot();

    @Test
    void planOfTheFleet() {
        Planner planner = new Planner(new ExactScheduler(SearchLimits.USUAL));
        System.out.printf(
                Locale.ROOT,
                "%n%,d trucks, %d depots, %,d readings%n%-6s %8s %8s %14s %14s %8s%n",
                TRUCKS,
                FLEET.depots().size(),
                FLEET.readings().size(),
                "kept",
                "seconds",
                "visits",
                "cost",
                "bound",
                "gap %");
        for (int kept : TRUCKS > 2_000 ? new int[] {3} : new int[] {1, 2, 3, 5, 8}) {
            VisitRules usual = VisitRules.standard();
            VisitRules rules = new VisitRules(
                    usual.bayPerVisit(),
                    usual.coolantPerLitre(),
                    usual.downtimePerDay(),
                    usual.latePerDay(),
                    usual.taskLatePerDay(),
                    usual.warrantyTestWorth(),
                    usual.reschedulingCost(),
                    usual.frozenWeeks(),
                    kept);
            long start = System.nanoTime();
            Plan plan = planner.plan(FLEET, Policy.standard().withVisits(rules), DemoFleet.TODAY);
            double seconds = (System.nanoTime() - start) / 1e9;
            PlanCost cost = plan.cost();
            System.out.printf(
                    Locale.ROOT,
                    "%-6d %8.1f %8d %,14.0f %,14.0f %8.3f%n",
                    kept,
                    seconds,
                    plan.visits().size(),
                    cost.cost(),
                    cost.bound() == null ? Double.NaN : cost.bound(),
                    cost.gap() == null ? Double.NaN : 100 * cost.gap());
        }
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        System.out.printf(
                Locale.ROOT,
                "heap in use after it, fleet and last plan included: %,d MiB of at most %,d MiB%n",
                (runtime.totalMemory() - runtime.freeMemory()) >> 20,
                runtime.maxMemory() >> 20);
    }
}
