package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.life.EarlyFailures;
import dev.injectorplanner.core.life.WeibullLife;
import java.util.Objects;

/**
 * The life model in use for the injectors of one part and origin.
 *
 * @param part part number
 * @param origin new or reman
 * @param clock what ages are counted in, the same for both origins of a part
 * @param life shape and scale, ages in the clock's unit; of a posterior, its centre
 * @param early early failures beside it; {@link EarlyFailures#NONE} where the records do not ask for them
 * @param source where it comes from
 * @param prior whose prior stands behind it: empty where fitted, else "planner default" or "the part's other origin"
 * @param failures injectors that failed in service
 * @param worn injectors taken out worn, counted as failing what was left of their delay later
 * @param suspensions injectors last seen alive
 */
public record PartLife(
        String part,
        Origin origin,
        Clock clock,
        WeibullLife life,
        EarlyFailures early,
        LifeSource source,
        String prior,
        long failures,
        long worn,
        long suspensions) {
    public PartLife {
        early = Objects.requireNonNullElse(early, EarlyFailures.NONE); // absent from plans that were kept before
    }

    /** Chance that a new unit is still alive at an age, early failures included. */
    public double survival(double age) {
        return life.survival(age) * early.survival(age);
    }
}
