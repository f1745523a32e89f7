package dev.injectorplanner.core.due;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsFirst;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.InspectionDates;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is due within a horizon: safety items, and what the rules find on age, distance, engine hours, faults, tests, risk, undetected defects, warranty
 * and scheduled services. Where the risk of an injector is known, the evidence quotes it.
 */
public final class DueItems {
    /** Most pressing first: safety items, then by day, then work before tests before tasks, then by truck, cylinder, kind, task, fault code and evidence. */
    public static final Comparator<DueItem> MOST_PRESSING = comparing((DueItem item) -> item.kind() != DueKind.SAFETY)
            .thenComparing(DueItem::by)
            .thenComparing(DueItem::action)
            .thenComparing(DueItem::truck)
            .thenComparing(DueItem::cylinder, nullsFirst(naturalOrder()))
            .thenComparing(DueItem::kind)
            .thenComparing(DueItem::task, nullsFirst(naturalOrder()))
            .thenComparing(DueItem::faultCode, nullsFirst(naturalOrder()))
            .thenComparing(DueItem::evidence);

    private final FleetIndex index;
    private final RuleBook rules;
    private final FleetUsage usage;
    private final @Nullable FleetRisk risk;
    private final UnseenLimit unseen;
    private final SafetyLimit safety;

    /** Without forecasts: rules on risk and undetected defects find nothing. */
    public DueItems(FleetIndex index, RuleBook rules, FleetUsage usage) {
        this(index, rules, usage, null, UnseenLimit.of(UnseenLimit.STANDARD), SafetyLimit.standard());
    }

    /**
     * @param unseen how likely a road failure from an undetected defect may become before a truck is tested
     * @param safety how soon a truck with a fuel leak must come in
     */
    public DueItems(
            FleetIndex index,
            RuleBook rules,
            FleetUsage usage,
            @Nullable FleetRisk risk,
            UnseenLimit unseen,
            SafetyLimit safety) {
        this.index = index;
        this.rules = rules;
        this.usage = usage;
        this.risk = risk;
        this.unseen = unseen;
        this.safety = safety;
    }

    /**
     * Everything due, most pressing first.
     *
     * @param ages the fitted injectors, as {@link FleetUsage#injectorAges} lists them
     * @param today the day of the plan
     * @param until last day of the horizon
     */
    public List<DueItem> find(List<InjectorAge> ages, LocalDate today, LocalDate until) {
        Map<String, List<InjectorAge>> byTruck = new LinkedHashMap<>();
        ages.forEach(age ->
                byTruck.computeIfAbsent(age.truck(), truck -> new ArrayList<>()).add(age));
        List<DueItem> dueItems = new ArrayList<>();
        for (Truck truck : index.fleet().trucks()) {
            if (truck.inServiceAt(today)) {
                TruckCheck one = new TruckCheck(
                        truck, index, rules, usage.of(truck.truck()), today, lastDay(truck, until), risk);
                List<InjectorAge> fitted = byTruck.getOrDefault(truck.truck(), List.of());
                SafetyRule.apply(one, fitted, safety.of(rules, truck.family()));
                fitted.forEach(age -> injector(one, age));
                forecast(one, fitted);
                WarrantyRule.apply(one, fitted);
                IntervalRule.apply(one);
                dueItems.addAll(one.dueItems());
            }
        }
        dueItems.sort(MOST_PRESSING);
        return dueItems;
    }

    private static LocalDate lastDay(Truck truck, LocalDate until) {
        LocalDate out = truck.outOfServiceOn();
        return out == null || out.isAfter(until) ? until : out.minusDays(1);
    }

    private void forecast(TruckCheck truck, List<InjectorAge> fitted) {
        if (risk == null) {
            return;
        }
        for (InjectorAge age : fitted) {
            RiskRule.apply(truck, age, risk);
        }
        InspectionRule.apply(truck, fitted, new InspectionDates(risk, unseen.chance(), truck.today), unseen);
    }

    private static void injector(TruckCheck truck, InjectorAge age) {
        AgeRules.apply(truck, age);
        FaultRule.apply(truck, age);
        TestRules.apply(truck, age);
    }
}
