package dev.injectorplanner.core.schedule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a scheduler answers.
 *
 * @param choices the option chosen for each truck that has one
 * @param notPlaced trucks without a choice, each with the reason in words
 * @param cost sum of the chosen costs and of overtime
 * @param bound a proven lower bound of the cost of any schedule that keeps the wishes this one keeps, or null where the
 *     scheduler proves none
 * @param brokenWishes pins and latest weeks that limits forbid; their trucks were placed as if these had not been asked
 * @param stop why the search ended
 */
public record Schedule(
        List<Choice> choices,
        List<NotPlaced> notPlaced,
        double cost,
        @Nullable Double bound,
        List<BrokenWish> brokenWishes,
        Stop stop) {
    public Schedule {
        choices = List.copyOf(choices);
        notPlaced = List.copyOf(notPlaced);
        brokenWishes = List.copyOf(brokenWishes);
    }

    /** A schedule by rule, without broken wishes. */
    public Schedule(List<Choice> choices, List<NotPlaced> notPlaced, double cost, @Nullable Double bound) {
        this(choices, notPlaced, cost, bound, List.of(), Stop.RULE);
    }

    /** How far from the best the cost may be, as a share of it (0.01 is 1 %); null without a bound. */
    public @Nullable Double gap() {
        if (bound == null) {
            return null;
        }
        double apart = Math.max(0, cost - bound);
        return apart == 0 ? Double.valueOf(0) : Double.valueOf(apart / Math.abs(cost));
    }

    /** One truck's option. */
    public record Choice(String truck, VisitOption option) {}

    /** A truck without a choice and why. */
    public record NotPlaced(String truck, String reason) {}

    /**
     * A pin or latest week that could not be met.
     *
     * @param truck the truck
     * @param wish what was asked
     * @param week the week pinned, or the latest
     * @param reason which limit forbids it, in words
     */
    public record BrokenWish(String truck, Wish wish, int week, String reason) {}

    /** What may be asked for a truck. */
    public enum Wish {
        PIN,
        LATEST_WEEK
    }

    /** Why a search ended. */
    public enum Stop {
        /** A fixed rule that does not search. */
        RULE,
        /** The schedule is proven the best, or as near to it as was asked. */
        PROVEN,
        /** The work it was allowed is done; the same on every machine. */
        WORK_LIMIT,
        /** The clock stopped it; another run may end elsewhere. */
        CLOCK
    }
}
