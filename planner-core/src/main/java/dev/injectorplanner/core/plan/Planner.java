package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.coolant.CoolantPlan;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.parts.FailureForecast;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.parts.PostponementCost;
import dev.injectorplanner.core.risk.ExpectedFailures;
import dev.injectorplanner.core.risk.FailureBands;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.schedule.ExtraCapacity;
import dev.injectorplanner.core.schedule.VisitScheduler;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
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
     *     cannot replace others
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
     * @param holds pins, blocked weeks and confirmed visits
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
        PreparedFleet prepared = prepare(fleet, policy, today);
        return tell(prepared.tryOut(scheduler, holds, List.of()), otherForecast);
    }

    /**
     * Learns a fleet's lives, for its depots to be planned one by one, in turn or on several nodes: each takes these and the
     * snapshot of one depot to {@link #prepare(FleetSnapshot, Policy, LocalDate, FleetLives)}, and holds no more than that
     * depot while it plans. Depots that share a duty group should be planned as one snapshot; else each counts the trucks of
     * the others as on the road.
     */
    public FleetLives learnLives(FleetSnapshot wholeFleet, Policy policy, LocalDate today) {
        FleetIndex index = new FleetIndex(wholeFleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        RuleBook rules = new RuleBook(wholeFleet);
        return FleetRisk.of(index, usage, List.of(), rules::ratio, today, policy.defects(), 1, null)
                .shared();
    }

    /**
     * What each of the site's own rules costs: the fleet planned without it, one rule at a time. A difference below the gap of
     * the two schedules may be none.
     *
     * @param progress told the number of rules priced so far
     * @param stopped asked between rules; where true those priced so far are returned
     * @return the dearest first
     */
    public List<RulePrice> priceRules(
            FleetSnapshot fleet,
            Policy policy,
            LocalDate today,
            Holds holds,
            IntConsumer progress,
            BooleanSupplier stopped) {
        return new RulePrices(scheduler, fleet, policy, today, holds).list(progress, stopped);
    }

    /** Learns a fleet and prices its visits, for plans within several holds and capacities. */
    public PreparedFleet prepare(FleetSnapshot fleet, Policy policy, LocalDate today) {
        return new PreparedFleet(Learned.of(fleet, policy, today));
    }

    /**
     * The same for a part of a fleet, judged by the lives of the whole.
     *
     * @param lives of a fleet that has all injector parts of this one
     */
    public PreparedFleet prepare(FleetSnapshot fleet, Policy policy, LocalDate today, FleetLives lives) {
        return new PreparedFleet(Learned.of(fleet, policy, today, lives));
    }

    /** As {@link PreparedFleet#tryOut}, with this planner's scheduler. */
    public PreparedFleet.Trial tryOut(PreparedFleet fleet, Holds holds, List<ExtraCapacity> extra) {
        return fleet.tryOut(scheduler, holds, extra);
    }

    /** The same near another trial, to be compared with it. */
    public PreparedFleet.Trial tryOut(
            PreparedFleet fleet, Holds holds, List<ExtraCapacity> extra, PreparedFleet.Trial near) {
        return fleet.tryOut(scheduler, holds, extra, near);
    }

    /** The whole plan of a schedule that was tried out. */
    public Plan tell(PreparedFleet.Trial trial) {
        return tell(trial, null);
    }

    private static Plan tell(PreparedFleet.Trial trial, @Nullable FailureForecast otherForecast) {
        Draft draft = trial.draft;
        Outcome outcome = new Outcome(draft);
        FailureForecast forecast = otherForecast != null
                ? otherForecast
                : new UnplannedChances(draft.learned().risk().risks(), outcome.visits());
        return assembled(draft, outcome, forecast);
    }

    private static Plan assembled(Draft draft, Outcome outcome, FailureForecast forecast) {
        Learned learned = draft.learned();
        FleetIndex index = learned.index();
        LocalDate today = learned.today();
        List<Visit> visits = outcome.visits();
        Policy policy = learned.policy();
        FleetRisk risk = learned.risk();
        List<FamilyInspection> inspections =
                FamilyInspection.of(index, risk, learned.costs(), policy.inspectionHours());
        CoolantPlan coolant = CoolantPlan.of(index, visits, policy.coolant());
        PartsPlan parts = partsOf(draft, visits, forecast, coolant);
        RecordsState records =
                RecordsState.of(index, learned.usage(), risk.questions(), policy.staleReadingDays(), today);
        return new Plan(
                today,
                learned.firstWeek(),
                policy.weeks(),
                PlanCost.of(draft),
                learned.ages(),
                risk.risks(),
                risk.lives().lives(),
                risk.signEffects(),
                inspections,
                ExpectedFailures.of(risk.risks(), today, policy.weeks()),
                learned.dueItems(),
                visits,
                outcome.reasons(),
                outcome.unplanned(),
                draft.days(),
                outcome.loads(),
                parts,
                CoresOwed.of(index, today),
                WarrantyClaims.of(index, today),
                coolant,
                assumptions(learned, parts, inspections, records),
                draft.safety().cases(),
                risk.lives().changes(),
                FailureBands.of(risk, learned.usage()),
                records);
    }

    private static PartsPlan partsOf(Draft draft, List<Visit> visits, FailureForecast forecast, CoolantPlan coolant) {
        Learned learned = draft.learned();
        Policy policy = learned.policy();
        return new OrderDays(learned, draft.calendar())
                .of(PartsPlan.of(
                        learned.index(),
                        learned.today(),
                        policy.weeks(),
                        policy.orders(),
                        visits,
                        forecast,
                        PostponementCost.perWeek(policy.orders()),
                        draft.allocation(),
                        coolant));
    }

    private static List<Assumption> assumptions(
            Learned learned, PartsPlan parts, List<FamilyInspection> inspections, RecordsState records) {
        return new Assumptions()
                .policy(learned.policy())
                .rules(learned.rules(), learned.index())
                .records(records)
                .usage(learned.usage())
                .risk(learned.risk(), inspections, learned.unseen())
                .safety(learned.policy().safety())
                .visits(learned.policy().visits(), learned.shifts(), learned.index())
                .supply(learned.index(), learned.policy(), parts, learned.today())
                .list();
    }
}
