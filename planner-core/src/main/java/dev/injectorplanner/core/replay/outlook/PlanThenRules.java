package dev.injectorplanner.core.replay.outlook;

import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.keeper.AgesAndSigns;
import dev.injectorplanner.core.replay.keeper.RuleFigures;
import dev.injectorplanner.core.replay.run.FleetRun;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.OracleView;
import dev.injectorplanner.core.replay.run.WorkOrder;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Does what a plan has for each week and what new signs ask for, as next week's plan would, and looks after the fleet by rules
 * once the plan ends. A planned injector that has been
 * replaced meanwhile, after a failure, is not replaced again; a visit that did not come about is asked for again.
 */
final class PlanThenRules implements Keeper {
    private final TreeMap<Integer, List<WorkOrder>> weeks = new TreeMap<>();
    private final FleetRun run;
    private final AgesAndSigns rules;
    private final AgesAndSigns signs;
    private final int planEnds;

    /**
     * @param names places of the trucks by name
     * @param run the run it keeps
     */
    PlanThenRules(Plan plan, Map<String, Integer> names, FleetRun run, List<RuleFigures> figures) {
        this.run = run;
        this.rules = new AgesAndSigns(figures);
        this.signs =
                new AgesAndSigns(figures.stream().map(RuleFigures::signsOnly).toList());
        this.planEnds = (int) plan.firstWeek().plus(plan.weeks()).monday().toEpochDay();
        for (Visit visit : plan.visits()) {
            Integer truck = names.get(visit.truck());
            if (truck != null && (!visit.cylinders().isEmpty() || visit.inspection())) {
                int mask =
                        visit.cylinders().stream().mapToInt(c -> 1 << (c - 1)).sum();
                weeks.computeIfAbsent((int) visit.week().monday().toEpochDay(), week -> new ArrayList<>())
                        .add(new WorkOrder(truck, mask, visit.inspection()));
            }
        }
    }

    @Override
    public List<WorkOrder> decide(OracleView fleet, int monday) {
        if (monday >= planEnds) {
            return rules.decide(fleet, monday);
        }
        List<WorkOrder> left = new ArrayList<>();
        weeks.headMap(monday, true).forEach((week, orders) -> {
            for (WorkOrder order : orders) {
                int mask = stillThere(fleet, order);
                boolean test = order.test() && week == monday; // a test that did not come about, a later plan asks for
                if ((mask != 0 || test) && fleet.inService(order.truck(), monday)) {
                    left.add(new WorkOrder(order.truck(), mask, test));
                }
            }
        });
        left.addAll(signs.decide(fleet, monday));
        return left;
    }

    /** Cylinders of an order whose injector is still the one that was planned to come out. */
    private int stillThere(OracleView fleet, WorkOrder order) {
        int mask = 0;
        for (int cylinder = 0; cylinder < fleet.cylinders(order.truck()); cylinder++) {
            boolean planned = (order.cylinders() & 1 << cylinder) != 0;
            mask |= planned && run.isFirst(order.truck(), cylinder) ? 1 << cylinder : 0;
        }
        return mask;
    }

    @Override
    public int whileOpen(OracleView fleet, int truck, int day, int failed) {
        return rules.whileOpen(fleet, truck, day, failed);
    }
}
