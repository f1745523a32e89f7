package dev.injectorplanner.core.finding;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsFirst;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is due within a horizon, by the rules on age, distance, engine hours, faults, tests, warranty and interval tasks.
 * Rules on risk are kept and wait for life curves: they find nothing here.
 */
public final class DueFindings {
    /** Most pressing first: by day, then work before tests before tasks, then by truck, cylinder, kind, task and evidence. */
    public static final Comparator<DueFinding> MOST_PRESSING = comparing(DueFinding::by)
            .thenComparing(DueFinding::action)
            .thenComparing(DueFinding::truck)
            .thenComparing(DueFinding::cylinder, nullsFirst(naturalOrder()))
            .thenComparing(DueFinding::kind)
            .thenComparing(DueFinding::task, nullsFirst(naturalOrder()))
            .thenComparing(DueFinding::evidence);

    private final FleetIndex index;
    private final RuleBook rules;
    private final FleetUsage usage;

    public DueFindings(FleetIndex index, RuleBook rules, FleetUsage usage) {
        this.index = index;
        this.rules = rules;
        this.usage = usage;
    }

    /**
     * Everything due, most pressing first.
     *
     * @param ages the fitted injectors, as {@link FleetUsage#injectorAges} lists them
     * @param today the day of the plan
     * @param until last day of the horizon
     */
    public List<DueFinding> find(List<InjectorAge> ages, LocalDate today, LocalDate until) {
        Map<String, List<InjectorAge>> byTruck = new LinkedHashMap<>();
        ages.forEach(age ->
                byTruck.computeIfAbsent(age.truck(), truck -> new ArrayList<>()).add(age));
        List<DueFinding> findings = new ArrayList<>();
        for (Truck truck : index.fleet().trucks()) {
            if (truck.inServiceAt(today)) {
                TruckCase one =
                        new TruckCase(truck, index, rules, usage.of(truck.truck()), today, lastDay(truck, until));
                List<InjectorAge> fitted = byTruck.getOrDefault(truck.truck(), List.of());
                fitted.forEach(age -> injector(one, age));
                WarrantyRule.apply(one, fitted);
                IntervalRule.apply(one);
                findings.addAll(one.findings());
            }
        }
        findings.sort(MOST_PRESSING);
        return findings;
    }

    private static LocalDate lastDay(Truck truck, LocalDate until) {
        LocalDate out = truck.outOfServiceOn();
        return out == null || out.isAfter(until) ? until : out.minusDays(1);
    }

    private static void injector(TruckCase truck, InjectorAge age) {
        AgeRules.apply(truck, age);
        FaultRule.apply(truck, age);
        TestRules.apply(truck, age);
    }
}
