package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.calendar.PlanWeeks;
import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.usage.FleetUsage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What deferring each injector costs, by the weeks of a plan; worked out once for each. */
public final class Deferrals {
    private final ReplacementCosts costs;
    private final FleetUsage usage;
    private final PlanWeeks weeks;
    private final double[] moments;
    private final Map<String, CostOfDeferring> known = new ConcurrentHashMap<>();

    public Deferrals(ReplacementCosts costs, FleetUsage usage, PlanWeeks weeks) {
        this.costs = costs;
        this.usage = usage;
        this.weeks = weeks;
        this.moments = weeks.moments();
    }

    /** Costs until each week of the plan begins, and of the best moment after it. */
    public CostOfDeferring of(Truck truck, InjectorRisk injector) {
        return known.computeIfAbsent(
                injector.truck() + "\n" + injector.cylinder(),
                key -> CostOfDeferring.of(
                        costs.pathOf(injector, injector.defectChance()),
                        costs.termsOf(truck, injector, perWeek(injector), weeksUntilLeaving(truck)),
                        moments,
                        weeks.horizon()));
    }

    double perWeek(InjectorRisk injector) {
        return injector.clock().of(usage.of(injector.truck())).perWeek();
    }

    /** Weeks until a truck leaves the fleet; infinite where that is not known. */
    double weeksUntilLeaving(Truck truck) {
        LocalDate out = truck.outOfServiceOn();
        return out == null ? Double.POSITIVE_INFINITY : Math.max(0, ChronoUnit.DAYS.between(weeks.today(), out) / 7.0);
    }
}
