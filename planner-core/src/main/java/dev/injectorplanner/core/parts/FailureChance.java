package dev.injectorplanner.core.parts;

import dev.injectorplanner.core.check.Require;

/**
 * How likely one injector is to fail in service.
 *
 * @param depot depot of its truck
 * @param part part that will replace it
 * @param chancePerWeek chance of failing within a week, 0 to below 1
 */
public record FailureChance(String depot, String part, double chancePerWeek) {
    public FailureChance {
        depot = Require.name("depot", depot);
        part = Require.name("part", part);
        Require.within("chance_per_week", chancePerWeek, 0, Math.nextDown(1.0));
    }

    /** Chance of failing within this many days, at the same rate every day. */
    double within(double days) {
        return -Math.expm1(days / 7 * Math.log1p(-chancePerWeek));
    }
}
