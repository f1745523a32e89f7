package dev.injectorplanner.core.replay.keeper;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.run.FleetView;
import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.OracleView;
import dev.injectorplanner.core.replay.run.WorkOrder;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The planner: plans every Monday from the tables alone, and does what the plan has for that week. */
public final class PlannerKeeper implements Keeper {
    /** What is done with the tests that a plan asks for. */
    public enum Tests {
        AS_PLANNED,
        /** Only those that are due within four weeks. */
        WHEN_DUE,
        NONE
    }

    /** What else is done while a truck is open for a failure. */
    public enum WhileOpen {
        FAILED_ONLY,
        /** What the week's plan has for that truck within the next weeks. */
        PLANNED_SOON,
        /** What the planner advises for a truck in the bay. */
        ADVISED
    }

    /**
     * How the planner is used.
     *
     * @param name what the policy is called in the results
     * @param policy how plans are made
     * @param tests what is done with their tests
     * @param whileOpen what else is done after a failure
     */
    public record Use(String name, Policy policy, Tests tests, WhileOpen whileOpen) {
        /** As production uses it. */
        public static Use standard(Policy policy) {
            return new Use("planner", policy, Tests.AS_PLANNED, WhileOpen.ADVISED);
        }
    }

    private static final int SOON_WEEKS = 8;
    private static final int DUE_DAYS = 28;

    private final Planner planner;
    private final Use use;
    private final Map<Integer, Integer> soon = new HashMap<>();
    private final List<PartOrder> orders = new ArrayList<>();

    public PlannerKeeper(Planner planner, Use use) {
        this.planner = planner;
        this.use = use;
    }

    @Override
    public boolean readsRecords() {
        return true;
    }

    @Override
    public List<WorkOrder> decide(OracleView fleet, int monday) {
        return decide((FleetView) fleet, monday);
    }

    private List<WorkOrder> decide(FleetView fleet, int monday) {
        LocalDate today = LocalDate.ofEpochDay(monday);
        Plan plan = planner.plan(fleet.snapshot(monday), use.policy(), today);
        IsoWeek week = IsoWeek.of(today);
        List<WorkOrder> work = new ArrayList<>();
        soon.clear();
        for (Visit visit : plan.visits()) {
            int truck = fleet.truckOf(visit.truck());
            int mask = maskOf(visit.cylinders());
            if (week.weeksUntil(visit.week()) <= SOON_WEEKS) {
                soon.merge(truck, mask, (one, other) -> one | other);
            }
            boolean test = visit.inspection() && tested(visit, today);
            if (visit.week().equals(week) && (mask != 0 || test)) {
                work.add(new WorkOrder(truck, mask, test));
            }
        }
        orders.clear();
        for (OrderLine line : plan.parts().orders()) {
            if (line.now()) {
                orders.add(new PartOrder(line.depot(), line.part(), (int) Math.ceil(line.quantity())));
            }
        }
        return work;
    }

    private boolean tested(Visit visit, LocalDate today) {
        return switch (use.tests()) {
            case AS_PLANNED -> true;
            case NONE -> false;
            case WHEN_DUE ->
                visit.dueItems().stream()
                        .anyMatch(due -> due.cylinder() == null && !due.by().isAfter(today.plusDays(DUE_DAYS)));
        };
    }

    private static int maskOf(Collection<Integer> cylinders) {
        return cylinders.stream().mapToInt(cylinder -> 1 << (cylinder - 1)).sum();
    }

    @Override
    public List<PartOrder> orders() {
        return List.copyOf(orders);
    }

    @Override
    public int whileOpen(OracleView fleet, int truck, int day, int failed) {
        return switch (use.whileOpen()) {
            case FAILED_ONLY -> failed;
            case PLANNED_SOON -> failed | soon.getOrDefault(truck, 0);
            case ADVISED -> failed | advised(fleet, truck, day, failed);
        };
    }

    private int advised(FleetView fleet, int truck, int day, int failed) {
        if (Integer.bitCount(failed) == fleet.cylinders(truck)) {
            return failed;
        }
        FleetSnapshot snapshot = fleet.snapshot(day);
        String name = fleet.nameOf(truck);
        List<Integer> cylinders = new ArrayList<>();
        for (int cylinder = 0; cylinder < fleet.cylinders(truck); cylinder++) {
            if ((failed & 1 << cylinder) != 0) {
                cylinders.add(cylinder + 1);
            }
        }
        Advisor.Advice advice =
                Advisor.advise(snapshot, use.policy(), LocalDate.ofEpochDay(day), name, cylinders, List.of());
        return maskOf(advice.best());
    }
}
