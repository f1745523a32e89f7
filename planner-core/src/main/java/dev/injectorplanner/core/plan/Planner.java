package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantNeeds;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.DueFindings;
import dev.injectorplanner.core.finding.RuleBook;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.PartNeed;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.ReplacementCosts;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleChecker;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import dev.injectorplanner.core.schedule.VisitScheduler;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.visit.VisitPlanner;
import dev.injectorplanner.core.visit.VisitWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The heart of the program: a fleet, a policy and a day in, a plan out. Pure: the same three give the same plan, whatever
 * the order of the rows.
 */
public final class Planner {
    private final VisitScheduler scheduler;

    public Planner(VisitScheduler scheduler) {
        this.scheduler = scheduler;
    }

    /**
     * Plans a fleet.
     *
     * @param fleet the fleet, of one depot or of all; of a duty group all trucks should be there, since those missing
     *     cannot stand in
     * @param policy how to plan
     * @param today the day it is made for; what was noted after it is left alone as far as meters go
     * @throws IllegalStateException if the scheduler breaks a limit, with each in words
     */
    public Plan plan(FleetSnapshot fleet, Policy policy, LocalDate today) {
        FleetIndex index = new FleetIndex(fleet);
        IsoWeek firstWeek = IsoWeek.of(today);
        RuleBook rules = new RuleBook(fleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        List<InjectorAge> ages = usage.injectorAges();
        FleetRisk risk = FleetRisk.of(index, usage, ages, rules::over, today);
        List<FamilyInspection> inspections = inspections(index, risk, policy);
        List<DueFinding> findings = new DueFindings(index, rules, usage, risk, policy.unseenLimit())
                .find(ages, today, firstWeek.plus(policy.weeks() - 1).sunday());
        Map<String, VisitWork> works = works(index, policy, findings, today);
        Outcome outcome = outcome(index, policy, works, today);
        List<Visit> visits = outcome.visits();
        List<PartNeed> parts = new PartNeeds(index, today).of(visits);
        List<Assumption> assumptions = new Assumptions()
                .policy(policy)
                .rules(rules, index)
                .usage(usage)
                .risk(risk, inspections, policy.unseenLimit())
                .visits()
                .parts(index, parts, today)
                .list();
        return new Plan(
                today,
                firstWeek,
                policy.weeks(),
                ages,
                risk.risks(),
                risk.lives().lives(),
                risk.conditions().effects(),
                inspections,
                ExpectedFailures.of(risk.risks(), today, policy.weeks()),
                findings,
                visits,
                outcome.unplanned(),
                outcome.loads(),
                parts,
                CoolantNeeds.of(index, visits, policy.renewCoolant()),
                assumptions);
    }

    private static List<FamilyInspection> inspections(FleetIndex index, FleetRisk risk, Policy policy) {
        ReplacementCosts costs = new ReplacementCosts(index, risk.lives());
        return FamilyInspection.of(index, risk, costs, policy.inspectionHours());
    }

    private Outcome outcome(FleetIndex index, Policy policy, Map<String, VisitWork> works, LocalDate today) {
        ScheduleRequest request = request(index, policy, works, today);
        Schedule schedule = scheduler.schedule(request);
        List<String> violations = ScheduleChecker.listViolations(request, schedule);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the schedule breaks its limits: " + String.join("; ", violations));
        }
        return new Outcome(index, IsoWeek.of(today), works, request, schedule);
    }

    /** The work of every truck with something due, the truck with the most pressing finding first. */
    private static Map<String, VisitWork> works(
            FleetIndex index, Policy policy, List<DueFinding> findings, LocalDate today) {
        Map<String, List<DueFinding>> byTruck = new LinkedHashMap<>();
        findings.forEach(finding -> byTruck.computeIfAbsent(finding.truck(), truck -> new ArrayList<>())
                .add(finding));
        Map<String, Truck> trucks = new LinkedHashMap<>();
        index.fleet().trucks().forEach(truck -> trucks.put(truck.truck(), truck));
        VisitPlanner visits = new VisitPlanner(index, policy.inspectionHours());
        List<VisitWork> works = new ArrayList<>();
        byTruck.forEach((name, due) -> {
            Truck truck = trucks.get(name);
            if (truck != null) {
                works.add(visits.workOf(truck, due, today));
            }
        });
        works.sort((one, other) -> DueFindings.MOST_PRESSING.compare(
                one.findings().get(0), other.findings().get(0)));
        Map<String, VisitWork> ordered = new LinkedHashMap<>();
        works.forEach(work -> ordered.put(work.truck().truck(), work));
        return ordered;
    }

    private static ScheduleRequest request(
            FleetIndex index, Policy policy, Map<String, VisitWork> works, LocalDate today) {
        CapacityCalendar calendar = new CapacityCalendar(index, today, policy.weeks());
        OptionBuilder options = new OptionBuilder(calendar, policy, today);
        return new ScheduleRequest(
                policy.weeks(),
                works.values().stream().map(options::optionsOf).toList(),
                calendar.depotCapacity(),
                calendar.groupCapacity());
    }
}
