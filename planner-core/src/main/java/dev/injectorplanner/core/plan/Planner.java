package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.finding.DueFindings;
import dev.injectorplanner.core.finding.RuleBook;
import dev.injectorplanner.core.finding.UnseenLimit;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.parts.MovingCost;
import dev.injectorplanner.core.parts.PartsPlan;
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
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

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
        return plan(fleet, policy, today, Holds.none());
    }

    /**
     * As above, within what the manager holds.
     *
     * @param holds pins, refusals and announced visits
     */
    public Plan plan(FleetSnapshot fleet, Policy policy, LocalDate today, Holds holds) {
        return plan(fleet, policy, today, holds, null);
    }

    /**
     * As above, with another forecast of failures that no visit foresees than the one learned here.
     *
     * @param otherForecast chances by depot and part, or null for those of the fleet's own risk
     */
    public Plan plan(
            FleetSnapshot fleet, Policy policy, LocalDate today, Holds holds, @Nullable FailureForecast otherForecast) {
        FleetIndex index = new FleetIndex(fleet);
        IsoWeek firstWeek = IsoWeek.of(today);
        LocalDate until = firstWeek.plus(policy.weeks() - 1).sunday();
        RuleBook rules = new RuleBook(fleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        List<InjectorAge> ages = usage.injectorAges();
        FleetRisk risk = FleetRisk.of(index, usage, ages, rules::over, today);
        UnseenLimit unseen = UnseenLimit.of(policy.unseenFailureLimit());
        List<FamilyInspection> inspections =
                FamilyInspection.of(index, risk, new ReplacementCosts(index, risk.lives()), policy.inspectionHours());
        List<DueFinding> findings = new DueFindings(index, rules, usage, risk, unseen).find(ages, today, until);
        TruckPricing pricing =
                new TruckPricing(index, policy, usage, risk, new ReplacementCosts(index, risk.lives()), today);
        CapacityCalendar calendar = new CapacityCalendar(index, today, policy.weeks());
        Map<String, TruckCase> cases =
                new CaseBuilder(pricing, calendar, policy, holds, today).casesOf(fleet, findings, today);
        ScheduleRequest request = new ScheduleRequest(
                policy.weeks(),
                cases.values().stream()
                        .filter(each ->
                                each.options().hasWish() || !each.visits().isEmpty())
                        .map(TruckCase::options)
                        .toList(),
                calendar.depotCapacity(),
                calendar.groupCapacity());
        Schedule schedule = checked(request, scheduler.schedule(request));
        Outcome outcome = new Outcome(index, firstWeek, cases, request, schedule, new VisitTeller(risk, firstWeek));
        List<Visit> visits = outcome.visits();
        FailureForecast forecast = otherForecast != null ? otherForecast : new UnplannedChances(risk.risks(), visits);
        MovingCost moving = MovingCost.perWeek(policy.orders());
        PartsPlan parts = PartsPlan.of(index, today, policy.weeks(), policy.orders(), visits, forecast, moving);
        List<Assumption> assumptions = new Assumptions()
                .policy(policy)
                .rules(rules, index)
                .usage(usage)
                .risk(risk, inspections, unseen)
                .visits(policy.visits())
                .parts(index, parts.needs(), today)
                .add(SupplyAssumptions.of(policy.orders(), policy.coolant(), parts))
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
                CoresOwed.of(index, today),
                WarrantyClaims.of(index, today),
                CoolantPlan.of(index, visits, policy.coolant()),
                assumptions);
    }

    private static Schedule checked(ScheduleRequest request, Schedule schedule) {
        List<String> violations = ScheduleChecker.listViolations(request, schedule);
        if (!violations.isEmpty()) {
            throw new IllegalStateException("the schedule breaks its limits: " + String.join("; ", violations));
        }
        return schedule;
    }
}
