package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.check.Require;

/**
 * How much more often injectors with a sign fail in the twelve weeks after it.
 *
 * @param sign the sign
 * @param ratio chance of failing against an injector of the same age that shows nothing, above 0
 * @param source {@link #FITTED} or {@link #DEFAULT}
 * @param failuresWith failures within twelve weeks of the sign
 */
public record SignEffect(Sign sign, double ratio, String source, long failuresWith) {
    /** Source of a ratio learned from the fleet's records. */
    public static final String FITTED = "fitted to the fleet's records";

    /** Source of a ratio that holds until the records tell. */
    public static final String DEFAULT = "planner default";

    public SignEffect {
        Require.positive("ratio of " + sign.words(), ratio);
    }
}
