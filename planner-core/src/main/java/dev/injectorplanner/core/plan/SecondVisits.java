package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.RideAlongTask;
import dev.injectorplanner.core.risk.WorthBeforeVisit;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Second visits: what a truck may come in for once more beside its main visit, in another week, without parts: an injector
 * test while the kit of the main visit is on its way, or a service that does not ride along. Only what saves by itself, bay,
 * labour and standing paid; a test is worth less by the injectors that the main visit replaces, and more where a defect that it
 * finds need not wait for that visit.
 */
final class SecondVisits {
    /** Weeks offered for one second visit: where all of them are full it is left out. */
    private static final int MOST_WAYS = 6;

    private final Learned learned;
    private final CapacityCalendar calendar;
    private final Holds holds;
    private final SafetyPlan safety;
    private final Map<RideAlongTask, double[]> alone = new IdentityHashMap<>();
    private final Map<PricedVisit, List<PricedVisit>> known = new IdentityHashMap<>();

    SecondVisits(Learned learned, CapacityCalendar calendar, Holds holds, SafetyPlan safety) {
        this.learned = learned;
        this.calendar = calendar;
        this.holds = holds;
        this.safety = safety;
    }

    /** What the best second visit beside a main one costs; below zero it saves, zero where there is none. */
    double bestCost(PricedTruck truck, PricedVisit main) {
        List<PricedVisit> ways = of(truck, main);
        return ways.isEmpty() ? 0 : ways.get(0).cost();
    }

    /** Ways of a second visit beside a main one, the cheapest first, each of which saves. */
    List<PricedVisit> of(PricedTruck truck, PricedVisit main) {
        return known.computeIfAbsent(main, none -> made(truck, main));
    }

    private List<PricedVisit> made(PricedTruck priced, PricedVisit main) {
        List<PricedVisit> ways = new ArrayList<>();
        for (RideAlongTask task : priced.pricer().rideAlongs()) {
            if (!task.must() && !main.rideAlongs().contains(task)) {
                add(ways, priced, main, task);
            }
        }
        return ways.stream()
                .sorted(Comparator.comparingDouble(PricedVisit::cost).thenComparingInt(PricedVisit::week))
                .limit(MOST_WAYS)
                .toList();
    }

    private void add(List<PricedVisit> ways, PricedTruck priced, PricedVisit main, RideAlongTask task) {
        OptionPricer pricer = priced.pricer();
        double[] by = alone.computeIfAbsent(task, none -> alone(pricer, task));
        double[] before = before(priced, main, task);
        RideAlongTask beside = task.besideVisit(main.set(), before);
        for (int week = 0; week < pricer.weeks(); week++) {
            if (week != main.week() && by[week] - before[week] < 0) {
                PricedVisit visit = pricer.price(week, 0, List.of(beside));
                if (visit.cost() < 0 && canCome(priced.truck(), visit)) {
                    ways.add(visit);
                }
            }
        }
    }

    private static double[] alone(OptionPricer pricer, RideAlongTask task) {
        double[] costs = new double[pricer.weeks()];
        for (int week = 0; week < costs.length; week++) {
            costs[week] = pricer.price(week, 0, List.of(task)).cost();
        }
        return costs;
    }

    /** What a test in each week before the main visit saves because the visit's own injectors need not wait for it. */
    private double[] before(PricedTruck priced, PricedVisit main, RideAlongTask task) {
        double[] saves = new double[priced.pricer().weeks()];
        if (task.name().equals(RideAlongTask.INSPECTION)) {
            for (int cylinder : main.cylinders()) {
                WorthBeforeVisit worth = learned.tests().beforeVisitOf(priced.truck(), cylinder);
                for (int week = 0; week < main.week(); week++) {
                    saves[week] += worth.of(week, main.week());
                }
            }
        }
        return saves;
    }

    private boolean canCome(Truck truck, PricedVisit visit) {
        LocalDate diagnosed = safety.dayOf(truck.truck());
        LocalDate after = diagnosed == null ? LocalDate.MIN : diagnosed;
        return holds.allows(truck.truck(), learned.firstWeek().plus(visit.week()))
                && visit.truckDays() <= calendar.daysFree(truck, visit.week(), after);
    }
}
