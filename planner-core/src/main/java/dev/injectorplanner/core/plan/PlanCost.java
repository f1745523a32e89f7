package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Schedule;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan costs against doing nothing in its horizon, and how far from the best possible it may be.
 *
 * @param cost sum of the visits' costs and of overtime, in the site's currency; below zero it saves
 * @param bound a proven lower bound of the cost, or null where none was proven
 * @param gap (cost - bound) as a share of the cost, or null without a bound
 * @param brokenWishes pins and latest weeks that limits forbid
 * @param stop why the search ended
 */
public record PlanCost(
        double cost,
        @Nullable Double bound,
        @Nullable Double gap,
        List<Schedule.BrokenWish> brokenWishes,
        Schedule.Stop stop) {
    public PlanCost {
        brokenWishes = List.copyOf(brokenWishes);
    }

    static PlanCost of(Schedule schedule, List<Schedule.BrokenWish> brokenWishes) {
        return new PlanCost(schedule.cost(), schedule.bound(), schedule.gap(), brokenWishes, schedule.stop());
    }
}
