package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.check.Require;

/**
 * The condition of one fitted injector.
 *
 * @param words its signs, or "no sign"
 * @param multiplier on the hazard of an average injector of its age, above 0: below 1 where it shows nothing
 * @param source {@link ConditionModel#FITTED} or {@link ConditionModel#DEFAULT}
 */
public record Condition(String words, double multiplier, String source) {
    public Condition {
        Require.positive("multiplier", multiplier);
    }
}
