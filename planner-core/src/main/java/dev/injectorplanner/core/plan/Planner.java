package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.DueFindings;
import dev.injectorplanner.core.finding.RuleBook;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.parts.PartsPlan;
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
import dev.injectorplanner.core.warranty.WarrantyClaims;
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
        return plan(fleet, policy, today, FailureForecast.NONE);
    }

    /**
     * As above, with what the risk model says of failures that no visit foresees.
     *
     * @param forecast chances by depot and part, or {@link FailureForecast#NONE}
     */
    public Plan plan(FleetSnapshot fleet, Policy policy, LocalDate today, FailureForecast forecast) {
        FleetIndex index = new FleetIndex(fleet);
        IsoWeek firstWeek = IsoWeek.of(today);
        LocalDate until = firstWeek.plus(policy.weeks() - 1).sunday();
        RuleBook rules = new RuleBook(fleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        List<InjectorAge> ages = usage.injectorAges();
        List<DueFinding> findings = new DueFindings(index, rules, usage).find(ages, today, until);
        Map<String, VisitWork> works = works(index, policy, findings, today);
        ScheduleRequest request = request(index, policy, works, today);
        Schedule schedule = scheduler.schedule(request);
        List<String> violations = ScheduleChecker.listViolations(request, schedule);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the schedule breaks its limits: " + String.join("; ", violations));
        }
        Outcome outcome = new Outcome(index, firstWeek, works, request, schedule);
        List<Visit> visits = outcome.visits();
        PartsPlan parts = PartsPlan.of(index, today, policy.weeks(), policy.orders(), visits, forecast);
        List<Assumption> assumptions = new Assumptions()
                .policy(policy)
                .rules(rules, index)
                .usage(usage)
                .visits()
                .supply(index, policy, parts, today)
                .list();
        return new Plan(
                today,
                firstWeek,
                policy.weeks(),
                ages,
                findings,
                visits,
                outcome.unplanned(),
                outcome.loads(),
                parts,
                CoresOwed.of(index, today),
                WarrantyClaims.of(index, today),
                CoolantPlan.of(index, visits, policy.coolant()),
                assumptions);
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
