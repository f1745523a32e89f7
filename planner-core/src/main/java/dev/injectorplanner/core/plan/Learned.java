package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.due.UnseenLimit;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.risk.ReplacementCosts;
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
 * @param costs costs of replacing and of waiting
 * @param unseen limit for undetected defects
 * @param dueItems what is due within the horizon, most pressing first
 */
record Learned(
        FleetIndex index,
        LocalDate today,
        Policy policy,
        RuleBook rules,
        FleetUsage usage,
        List<InjectorAge> ages,
        FleetRisk risk,
        ReplacementCosts costs,
        UnseenLimit unseen,
        List<DueItem> dueItems) {

    static Learned of(FleetSnapshot fleet, Policy policy, LocalDate today) {
        return of(fleet, policy, today, null);
    }

    /** @param shared lives learned from more of the fleet, or null to learn them here */
    static Learned of(FleetSnapshot fleet, Policy policy, LocalDate today, @Nullable FleetLives shared) {
        FleetIndex index = new FleetIndex(fleet);
        RuleBook rules = new RuleBook(fleet);
        FleetUsage usage = new FleetUsage(index, policy.usageWindowDays(), today);
        List<InjectorAge> ages = usage.injectorAges();
        FleetRisk risk = FleetRisk.of(index, usage, ages, rules::over, today, policy.defects(), shared);
        UnseenLimit unseen = UnseenLimit.of(policy.unseenFailureLimit());
        LocalDate until = IsoWeek.of(today).plus(policy.weeks() - 1).sunday();
        List<DueItem> dueItems =
                new DueItems(index, rules, usage, risk, unseen, policy.safety()).find(ages, today, until);
        ReplacementCosts costs = new ReplacementCosts(index, risk.lives(), policy.accessShareHours());
        return new Learned(index, today, policy, rules, usage, ages, risk, costs, unseen, dueItems);
    }

    IsoWeek firstWeek() {
        return IsoWeek.of(today);
    }

    TruckPricing pricing() {
        return new TruckPricing(index, policy, usage, risk, costs, today);
    }
}
