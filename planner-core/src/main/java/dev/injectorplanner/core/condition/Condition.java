package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.check.Require;

/**
 * The condition of one fitted injector. Multipliers are on the hazard of its life model at its age.
 *
 * @param words its signs, or "no sign"
 * @param multiplier over the coming 12 weeks, above 0: below 1 where it shows nothing
 * @param source {@link ConditionModel#FITTED} or {@link ConditionModel#DEFAULT}
 * @param early within weeks 1 to 4
 * @param middle within weeks 5 to 12
 * @param late within weeks 13 to 26 and beyond
 */
public record Condition(String words, double multiplier, String source, double early, double middle, double late) {
    public Condition {
        Require.positive("multiplier", multiplier);
        Require.positive("early multiplier", early);
        Require.positive("middle multiplier", middle);
        Require.positive("late multiplier", late);
    }
}
