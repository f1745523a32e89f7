package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.DueFindings;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.OptionPricer;
import dev.injectorplanner.core.option.PricedVisit;
import dev.injectorplanner.core.option.VisitRules;
import dev.injectorplanner.core.parts.PartArrivals;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The ways of every truck: priced, within what the manager holds, and in weeks in which it can be spared. */
final class CaseBuilder {
    private final TruckPricing pricing;
    private final CapacityCalendar calendar;
    private final VisitRules rules;
    private final Holds holds;
    private final IsoWeek firstWeek;
    private final LocalDate today;
    private final PartArrivals arrivals;
    private final double expedite;

    CaseBuilder(Learned learned, CapacityCalendar calendar, Holds holds) {
        this.pricing = learned.pricing();
        this.calendar = calendar;
        this.rules = learned.policy().visits();
        this.holds = holds;
        this.firstWeek = learned.firstWeek();
        this.today = learned.today();
        this.arrivals = new PartArrivals(
                learned.index(), learned.today(), learned.policy().orders());
        this.expedite = learned.policy().orders().expeditePrice().doubleValue();
    }

    /** Cases of the trucks in service, the one with the most pressing finding first, then by what a visit saves. */
    Map<String, TruckCase> casesOf(FleetSnapshot fleet, List<DueFinding> findings) {
        Map<String, List<DueFinding>> due = new HashMap<>();
        findings.forEach(finding ->
                due.computeIfAbsent(finding.truck(), truck -> new ArrayList<>()).add(finding));
        List<TruckCase> cases = new ArrayList<>();
        for (Truck truck : fleet.trucks()) {
            if (truck.inServiceAt(today)) {
                cases.add(caseOf(truck, due.getOrDefault(truck.truck(), List.of())));
            }
        }
        cases.sort(Comparator.comparing(CaseBuilder::mostPressing, Comparator.nullsLast(DueFindings.MOST_PRESSING))
                .thenComparingDouble(CaseBuilder::leastCost)
                .thenComparing(each -> each.truck().truck()));
        Map<String, TruckCase> ordered = new LinkedHashMap<>();
        cases.forEach(each -> ordered.put(each.truck().truck(), each));
        return ordered;
    }

    private static @Nullable DueFinding mostPressing(TruckCase truck) {
        return truck.findings().isEmpty() ? null : truck.findings().get(0);
    }

    private static double leastCost(TruckCase truck) {
        return truck.visits().stream().mapToDouble(PricedVisit::cost).min().orElse(0);
    }

    private TruckCase caseOf(Truck truck, List<DueFinding> findings) {
        OptionPricer pricer = pricing.pricerOf(truck, findings);
        IsoWeek announced = holds.announced().get(truck.truck());
        Integer pinned = pinnedWeek(truck, announced);
        List<PricedVisit> visits = new ArrayList<>(pricer.worthwhile(rules.keptSets()));
        if (pinned != null
                && pinned < pricer.weeks()
                && !pricer.pricedCylinders().isEmpty()) {
            int week = pinned;
            if (visits.stream().noneMatch(visit -> visit.week() == week)) {
                visits.add(pricer.best(week));
            }
        }
        visits.removeIf(visit -> !holds.allows(truck.truck(), firstWeek.plus(visit.week()))
                || visit.truckDays() > calendar.daysFree(truck, visit.week()));
        Map<Integer, LocalDate> ready = new HashMap<>();
        List<VisitOption> options = visits.stream()
                .map(visit -> new VisitOption(
                        visit.week(),
                        visit.cylinders(),
                        visit.labourHours(),
                        visit.truckDays(),
                        visit.cost() + waiting(truck, visit, ready) - stays(visit, announced)))
                .toList();
        return new TruckCase(
                truck,
                findings,
                pricing.setsOf(truck),
                pricer,
                visits,
                new TruckOptions(truck.truck(), truck.depot(), truck.dutyGroup(), options, null, pinned, null));
    }

    /** Expediting, where the kit of the visit's cylinders is not there by the week's Monday, or by today in this week. */
    private double waiting(Truck truck, PricedVisit visit, Map<Integer, LocalDate> ready) {
        LocalDate day = ready.computeIfAbsent(visit.set(), set -> arrivals.readyOn(standIn(truck, visit)));
        LocalDate monday = firstWeek.plus(visit.week()).monday();
        LocalDate begins = monday.isBefore(today) ? today : monday;
        return visit.set() != 0 && day.isAfter(begins) ? expedite : 0;
    }

    private Visit standIn(Truck truck, PricedVisit visit) {
        List<String> steps = pricing.setsOf(truck).steps(visit.set());
        return new Visit(
                truck.truck(),
                truck.depot(),
                truck.family(),
                firstWeek.plus(visit.week()),
                visit.cylinders(),
                steps,
                List.of(),
                false,
                visit.labourHours(),
                0,
                List.of(),
                "");
    }

    /** What a visit that stays in its announced week is worth more than one that moves. */
    private double stays(PricedVisit visit, @Nullable IsoWeek announced) {
        return announced != null && announced.equals(firstWeek.plus(visit.week())) ? rules.nuisance() : 0;
    }

    /** The week pinned; an announced visit of the frozen weeks is pinned too. */
    private @Nullable Integer pinnedWeek(Truck truck, @Nullable IsoWeek announced) {
        IsoWeek pin = holds.pins().get(truck.truck());
        if (pin != null) {
            return Math.max(0, firstWeek.weeksUntil(pin));
        }
        if (announced == null || !holds.allows(truck.truck(), announced)) {
            return null;
        }
        int week = firstWeek.weeksUntil(announced);
        return week >= 0 && week < rules.frozenWeeks() ? Integer.valueOf(week) : null;
    }
}
