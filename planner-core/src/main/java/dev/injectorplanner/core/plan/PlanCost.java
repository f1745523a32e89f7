package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Schedule;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan costs against doing nothing in its horizon, and how far from the best possible it may be. Money and weights are
 * never added up before a person: the sum is what the schedule is made by.
 *
 * @param cost money and weights together; below zero it saves
 * @param money expected money, in the site's currency: parts, labour, standing, express shipments and failures
 * @param weights what lateness past limits, moved visits and tests before a warranty ends weigh
 * @param bound a proven lower bound of the cost, or null where none was proven
 * @param gap (cost - bound) as a share of the cost, or null without a bound
 * @param brokenWishes pins and latest weeks that limits forbid
 * @param stop why the search ended
 */
public record PlanCost(
        double cost,
        double money,
        double weights,
        @Nullable Double bound,
        @Nullable Double gap,
        List<Schedule.BrokenWish> brokenWishes,
        Schedule.Stop stop) {
    public PlanCost {
        brokenWishes = List.copyOf(brokenWishes);
        money = money == 0 && weights == 0 ? cost : money; // a plan that was kept before the two were told apart
    }

    static PlanCost of(Draft draft) {
        Schedule schedule = draft.schedule();
        double weights = schedule.choices().stream()
                        .mapToDouble(
                                choice -> draft.builder().weights(draft.choicesOf(choice.truck()), choice.option()))
                        .sum()
                + draft.seconds().stream()
                        .mapToDouble(second -> second.visit().weights())
                        .sum();
        return new PlanCost(
                schedule.cost(),
                schedule.cost() - weights,
                weights,
                schedule.bound(),
                schedule.gap(),
                new BrokenWishes(draft).list(),
                schedule.stop());
    }
}
