package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.AllocatedPieces;
import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.PieceSource;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.generate.FleetGenerator;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.parts.SharedKits;
import dev.injectorplanner.core.schedule.EarliestFit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What sharing the stock of a fleet takes, and what comes of it: the demo, 1,000 and 4,000 trucks. */
@Tag("benchmark")
class SharedStockBenchmark {
    @Test
    void share() {
        look("demo", DemoFleet.make().snapshot(), true);
        for (int trucks : List.of(1_000, 4_000)) {
            look(
                    trucks + " trucks",
                    new FleetGenerator(DemoFleet.ofSize(trucks, 7)).generate().snapshot(),
                    false);
        }
    }

    private static void look(String name, FleetSnapshot fleet, boolean searched) {
        Planner planner = searched ? PlanOf.planner() : new Planner(new EarliestFit());
        long start = System.nanoTime();
        PreparedFleet prepared = planner.prepare(fleet, Policy.standard(), DemoFleet.TODAY);
        long priced = System.nanoTime();
        Plan plan = planner.tell(planner.tryOut(prepared, Holds.none(), List.of()));
        long told = System.nanoTime();
        SharedKits kits = new SharedKits(new FleetIndex(fleet), DemoFleet.TODAY, OrderRules.standard(), shelf -> 0);
        long before = System.nanoTime();
        Allocation alone = kits.ofWeeks(plan.visits());
        long shared = System.nanoTime();
        Map<PieceSource, Double> pieces = new EnumMap<>(PieceSource.class);
        for (AllocatedPieces each : plan.parts().allocation().pieces()) {
            pieces.merge(each.source(), each.quantity(), Double::sum);
        }
        System.out.printf(
                "%s: %d visits, learned %.1f s, planned and told %.1f s; one allocation of all visits %.3f s (%d lines);"
                        + " cost %.0f, gap %s; %d shipments for %.0f; pieces %s%n",
                name,
                plan.visits().size(),
                (priced - start) / 1e9,
                (told - priced) / 1e9,
                (shared - before) / 1e9,
                alone.pieces().size(),
                plan.cost().cost(),
                plan.cost().gap(),
                plan.parts().allocation().shipments().size(),
                plan.parts().allocation().cost(),
                pieces);
    }
}
