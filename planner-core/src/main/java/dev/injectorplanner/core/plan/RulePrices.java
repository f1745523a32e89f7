package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.risk.FleetLives;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.VisitScheduler;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/**
 * Prices each of the site's rules by planning without it. Lives are learned once, with all rules: limits of tests say what a
 * value over its limit means, and that is no matter of price.
 */
final class RulePrices {
    private final VisitScheduler scheduler;
    private final FleetSnapshot fleet;
    private final Policy policy;
    private final LocalDate today;
    private final Holds holds;

    RulePrices(VisitScheduler scheduler, FleetSnapshot fleet, Policy policy, LocalDate today, Holds holds) {
        this.scheduler = scheduler;
        this.fleet = fleet;
        this.policy = policy;
        this.today = today;
        this.holds = holds;
    }

    private record Outcome(double money, int visits, int injectors) {}

    /** One a rule, the dearest first; those done so far where it is stopped. */
    List<RulePrice> list(IntConsumer progress, BooleanSupplier stopped) {
        PreparedFleet all = new PreparedFleet(Learned.of(fleet, policy, today));
        FleetLives lives = all.lives();
        Outcome with = outcome(all);
        List<RulePrice> prices = new ArrayList<>();
        for (Rule rule : fleet.rules()) {
            if (stopped.getAsBoolean()) {
                break;
            }
            if (rule.rule() == RuleKind.SAFETY) {
                continue; // no matter of money
            }
            Outcome without = outcome(new PreparedFleet(Learned.without(rule, fleet, policy, today, lives)));
            prices.add(new RulePrice(
                    rule, with.money, without.money, with.visits, without.visits, with.injectors, without.injectors));
            progress.accept(prices.size());
        }
        prices.sort((one, other) -> Double.compare(other.price(), one.price()));
        return prices;
    }

    private Outcome outcome(PreparedFleet prepared) {
        Draft draft = prepared.tryOut(scheduler, holds, List.of()).draft;
        int visits = 0;
        int injectors = 0;
        for (Schedule.Choice choice : draft.schedule().choices()) {
            visits++;
            injectors += draft.choicesOf(choice.truck())
                    .visitOf(choice.option())
                    .cylinders()
                    .size();
        }
        return new Outcome(PlanCost.of(draft).money(), visits, injectors);
    }
}
