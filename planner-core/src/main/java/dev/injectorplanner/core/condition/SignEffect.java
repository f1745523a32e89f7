package dev.injectorplanner.core.condition;

import dev.injectorplanner.core.check.Require;

/**
 * How much more often injectors with a sign fail in the twelve weeks after it.
 *
 * @param sign the sign
 * @param ratio hazard ratio against an injector without it, above 0
 * @param source {@link ConditionModel#FITTED} or {@link ConditionModel#DEFAULT}
 * @param failuresWith failures that came within twelve weeks of a landmark day with the sign
 */
public record SignEffect(Sign sign, double ratio, String source, long failuresWith) {
    public SignEffect {
        Require.positive("ratio of " + sign.words(), ratio);
    }
}
