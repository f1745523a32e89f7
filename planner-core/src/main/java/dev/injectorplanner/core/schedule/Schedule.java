package dev.injectorplanner.core.schedule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a scheduler answers.
 *
 * @param choices the option chosen for each truck that has one
 * @param notPlaced trucks without a choice, each with the reason in words
 * @param cost sum of the chosen costs and of overtime
 * @param bound a proven lower bound of the cost, or null where the scheduler proves none
 */
public record Schedule(
        List<Choice> choices,
        List<NotPlaced> notPlaced,
        double cost,
        @Nullable Double bound) {
    public Schedule {
        choices = List.copyOf(choices);
        notPlaced = List.copyOf(notPlaced);
    }

    /** One truck's option. */
    public record Choice(String truck, VisitOption option) {}

    /** A truck without a choice and why. */
    public record NotPlaced(String truck, String reason) {}
}
