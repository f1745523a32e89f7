package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.calendar.PlanWeeks;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.due.UnseenLimit;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.risk.Deferrals;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.ReplacementCosts;
import dev.injectorplanner.core.risk.TestPlans;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.days.DepotWeek;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a fleet's records say on a day, before anything is decided.
 *
 * @param index the fleet
 * @param today the day
 * @param policy how to plan
 * @param rules limits of the site and defaults
 * @param usage usage of every truck
 * @param ages fitted injectors with their ages
 * @param risk chances of failure
 * @param rates rates and cylinder sets of the trucks
 * @param weeks the weeks of the plan
 * @param costs costs of replacing
 * @param deferrals costs of deferring
 * @param tests when testing each truck pays
 * @param unseen limit for undetected defects
 * @param dueItems what is due within the horizon, most pressing first
 * @param shifts when the bays of each depot are worked in
 */
record Learned(
        FleetIndex index,
        LocalDate today,
        Policy policy,
        RuleBook rules,
        FleetUsage usage,
        List<InjectorAge> ages,
        FleetRisk risk,
        TruckRates rates,
        PlanWeeks weeks,
        ReplacementCosts costs,
        Deferrals deferrals,
        TestPlans tests,
        UnseenLimit unseen,
        List<DueItem> dueItems,
        ShiftBook shifts) {

    static Learned of(FleetSnapshot fleet, Policy policy, LocalDate today) {
        return of(fleet, policy, today, null);
    }

    /** @param shared lives learned from more of the fleet, or null to learn them here */
    static Learned of(FleetSnapshot fleet, Policy policy, LocalDate today, @Nullable FleetLives shared) {
        return of(fleet, new RuleBook(fleet), policy, today, shared);
    }

    /** As if the site had not set one of its rules. */
    static Learned without(Rule rule, FleetSnapshot fleet, Policy policy, LocalDate today, FleetLives shared) {
        return of(fleet, new RuleBook(fleet, rule), policy, today, shared);
    }

    private static Learned of(
            FleetSnapshot fleet, RuleBook rules, Policy policy, LocalDate today, @Nullable FleetLives shared) {
        FleetIndex index = new FleetIndex(fleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        List<InjectorAge> ages = usage.injectorAges();
        FleetRisk risk = FleetRisk.of(
                index,
                usage,
                ages,
                rules::ratio,
                today,
                policy.defects(),
                policy.figures().signWeight(),
                shared);
        UnseenLimit unseen = UnseenLimit.of(policy.unseenFailureLimit());
        PlanWeeks weeks = new PlanWeeks(today, policy.weeks());
        ShiftBook shifts = new ShiftBook(index, policy.bayHoursPerDay());
        TruckRates rates = new TruckRates(index, policy, shifts);
        ReplacementCosts costs =
                new ReplacementCosts(index, risk, rates, policy.figures().renewalMargin());
        Deferrals deferrals = new Deferrals(costs, usage, weeks);
        TestPlans tests = new TestPlans(
                index, risk, costs, deferrals, rates, weeks, policy.figures().testWorth());
        List<DueItem> dueItems = new DueItems(
                        index, rules, usage, new DueItems.Forecasts(risk, tests, weeks), unseen, policy.safety())
                .find(ages, today, weeks.dayOf(policy.weeks()).minusDays(1));
        return new Learned(
                index, today, policy, rules, usage, ages, risk, rates, weeks, costs, deferrals, tests, unseen, dueItems,
                shifts);
    }

    IsoWeek firstWeek() {
        return IsoWeek.of(today);
    }

    /** Weeks from the plan's first until that of a day. */
    int weekOf(LocalDate day) {
        return firstWeek().weeksUntil(IsoWeek.of(day));
    }

    /** A week of a depot, with the times of its days. */
    DepotWeek depotWeek(Depot depot, CapacityCalendar calendar, int week, double overtimeHours) {
        return new DepotWeek(
                week,
                calendar.openDays(depot, week).stream()
                        .map(open -> shifts.day(depot.depot(), open))
                        .toList(),
                overtimeHours);
    }

    TruckPricing pricing() {
        return new TruckPricing(this);
    }
}
