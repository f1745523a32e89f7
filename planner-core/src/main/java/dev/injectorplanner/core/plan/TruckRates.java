package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.CylinderSets;
import dev.injectorplanner.core.option.Rates;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.risk.VisitCosts;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Rates and cylinder sets of every truck, and what a visit costs beyond parts and own labour. */
public final class TruckRates implements VisitCosts {
    private final FleetIndex index;
    private final Policy policy;
    private final Map<String, CylinderSets> sets = new ConcurrentHashMap<>();
    private final Map<String, Double> downtime = new HashMap<>();
    private final Map<String, Double> bayHours = new HashMap<>();

    /** @param shifts of the depots, for the hours that a bay works a day */
    public TruckRates(FleetIndex index, Policy policy, ShiftBook shifts) {
        this.index = index;
        this.policy = policy;
        index.fleet().depots().forEach(depot -> bayHours.put(depot.depot(), shifts.bayHoursPerDay(depot)));
        for (DutyGroup group : index.fleet().dutyGroups()) {
            downtime.put(group.dutyGroup(), group.downtimePerDay().doubleValue());
        }
    }

    CylinderSets setsOf(Truck truck) {
        return sets.computeIfAbsent(
                truck.family(), family -> new CylinderSets(index.family(family), index.accessOf(family)));
    }

    /** What an hour, a litre, a bay and a day off the road cost a truck, in the site's currency. */
    public Rates of(Truck truck) {
        VisitRules rules = policy.visits();
        String group = truck.dutyGroup();
        return new Rates(
                index.depot(truck.depot()).labourPerHour().doubleValue(),
                rules.coolantPerLitre(),
                rules.bayPerVisit(),
                group == null ? rules.downtimePerDay() : downtime.getOrDefault(group, rules.downtimePerDay()),
                bayHours.getOrDefault(truck.depot(), policy.bayHoursPerDay()));
    }

    /**
     * First run: the full set's visit divided by its cylinders. Later the access labour that visits really paid, with the
     * rest of the full set's visit.
     */
    @Override
    public double share(Truck truck) {
        CylinderSets of = setsOf(truck);
        Rates rates = of(truck);
        int full = of.count() - 1;
        double visit = of.fullSetShare(rates);
        Double paidHours = policy.accessShareHours().get(truck.family());
        if (paidHours != null) {
            visit += (paidHours - of.accessHours(full) / of.cylinders()) * rates.labourPerHour();
        }
        double downtime = rates.downtime(of.labourHours(full)) / of.cylinders();
        return Math.max(0, policy.figures().accessShare() * visit) + downtime;
    }

    @Override
    public double alone(Truck truck) {
        CylinderSets of = setsOf(truck);
        Rates rates = of(truck);
        double sum = 0;
        for (int cylinder = 0; cylinder < of.cylinders(); cylinder++) {
            int set = 1 << cylinder;
            sum += of.sharedCost(set, rates) + rates.downtime(of.labourHours(set));
        }
        return sum / of.cylinders();
    }

    @Override
    public double test(Truck truck) {
        Rates rates = of(truck);
        double hours = policy.inspectionHours();
        return hours * rates.labourPerHour() + rates.bayPerVisit() + rates.downtime(hours);
    }
}
