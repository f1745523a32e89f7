package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.OpenFaults;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.plan.SafetyCase;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A depot's trucks with what the plan in force says of each. */
final class Worklist {
    private final DepotPlan plan;
    private final Holds holds;
    private final LocalDate today;
    private final RuleBook rules;
    private final OpenFaults faults;
    private final Map<String, List<InjectorAge>> ages;
    private final Map<String, List<Visit>> visits;
    private final Set<String> safety;
    private final Set<String> unplanned;
    private final Set<String> waiting;
    private final Set<String> overdue = new java.util.HashSet<>();

    Worklist(DepotPlan plan, Holds holds) {
        this.plan = plan;
        this.holds = holds;
        this.today = plan.today();
        this.rules = new RuleBook(plan.fleet().fleet());
        this.faults = new OpenFaults(plan);
        this.ages = plan.plan().injectors().stream().collect(Collectors.groupingBy(InjectorAge::truck));
        this.visits = plan.visits().stream().collect(Collectors.groupingBy(Visit::truck));
        this.safety = plan.safety().stream().map(SafetyCase::truck).collect(Collectors.toSet());
        this.unplanned = plan.unplanned().stream().map(Unplanned::truck).collect(Collectors.toSet());
        this.waiting = plan.shortList().stream().map(ShortLine::truck).collect(Collectors.toSet());
        for (DueItem item : plan.dueItems()) {
            if (item.by().isBefore(today)) {
                overdue.add(item.truck());
            }
        }
    }

    List<WorkTruck> list() {
        return plan.fleet().fleet().trucks().stream()
                .filter(truck -> truck.depot().equals(plan.depot()) && truck.inServiceAt(plan.today()))
                .map(this::row)
                .toList();
    }

    private WorkTruck row(Truck truck) {
        Optional<InjectorRisk> worst =
                plan.risksOf(truck.truck()).stream().max(Comparator.comparingDouble(InjectorRisk::chance12));
        WorkTruck.@Nullable Next next = next(truck.truck());
        String group = truck.dutyGroup();
        return new WorkTruck(
                truck.truck(),
                truck.vinText(),
                plan.depot(),
                group == null ? "" : group,
                truck.family(),
                worst.map(risk -> new WorkTruck.Risk(risk.chance12(), risk.cylinder(), limit(truck)))
                        .orElse(null),
                faults.of(truck.truck()),
                meters(truck, worst.map(InjectorRisk::cylinder).orElse(null)),
                next,
                standing(truck.truck(), next),
                overdue.contains(truck.truck()) && !plan.isDone(truck.truck()));
    }

    private final Map<String, Optional<Double>> limits = new HashMap<>();

    private @Nullable Double limit(Truck truck) {
        return limits.computeIfAbsent(
                        truck.family(),
                        family -> rules.find(family, RuleKind.RISK).map(rule -> rule.limit() / 100))
                .orElse(null);
    }

    private WorkTruck.Meters meters(Truck truck, @Nullable Integer cylinder) {
        List<InjectorAge> fitted = ages.getOrDefault(truck.truck(), List.of());
        Double since = fitted.stream()
                .filter(age -> cylinder != null && age.cylinder() == cylinder && age.km() != null)
                .map(InjectorAge::km)
                .findFirst()
                .orElse(null);
        Double odometer = null;
        Double hours = null;
        List<Reading> readings = plan.fleet().readingsOf(truck.truck());
        for (int at = readings.size() - 1; at >= 0 && (odometer == null || hours == null); at--) {
            odometer = odometer == null ? readings.get(at).odometerKm() : odometer;
            hours = hours == null ? readings.get(at).engineHours() : hours;
        }
        return new WorkTruck.Meters(
                since,
                odometer,
                hours,
                fitted.isEmpty() ? null : Double.valueOf(fitted.get(0).kmPerWeek()));
    }

    private WorkTruck.@Nullable Next next(String truck) {
        return visits.getOrDefault(truck, List.of()).stream()
                .filter(visit -> !plan.isDone(truck, visit.week()))
                .min(Comparator.comparing(Visit::week).thenComparing(visit -> !visit.diagnosis()))
                .map(visit -> new WorkTruck.Next(
                        visit.week(),
                        DepotDays.find(plan.plan().days(), visit)
                                .map(laid -> laid.start().toLocalDate())
                                .orElse(null),
                        plan.work(visit),
                        visit.labourHours()))
                .orElse(null);
    }

    private Standing standing(String truck, WorkTruck.@Nullable Next next) {
        if (plan.isDone(truck) && next == null) {
            return Standing.DONE;
        }
        if (safety.contains(truck) && !plan.isDone(truck)) {
            return Standing.SAFETY;
        }
        if (next == null) {
            return unplanned.contains(truck) ? Standing.NO_VISIT : blocked(truck) ? Standing.BLOCKED : Standing.NOTHING;
        }
        if (inBay(truck)) {
            return Standing.IN_BAY;
        }
        if (waiting.contains(truck)) {
            return Standing.WAITS;
        }
        IsoWeek week = next.week();
        return week.equals(holds.pins().get(truck))
                ? Standing.PINNED
                : week.equals(holds.confirmed().get(truck)) ? Standing.CONFIRMED : Standing.PLANNED;
    }

    private boolean blocked(String truck) {
        return holds.blocked().containsKey(truck);
    }

    private boolean inBay(String truck) {
        for (DayPlan.Laid laid : plan.days().laid()) {
            if (laid.truck().equals(truck)
                    && laid.days().stream().anyMatch(work -> work.date().equals(today))) {
                return true;
            }
        }
        return false;
    }
}
