package dev.injectorplanner.core.fleet;

import dev.injectorplanner.core.check.Require;
import org.jspecify.annotations.Nullable;

/**
 * A limit that makes an injector due.
 *
 * @param family engine family, or null for all
 * @param rule what it looks at
 * @param limit the limit in the rule's unit (months, km, hours, faults, mm3/stroke, ml/min, percent, days), above 0
 * @param windowDays days looked back for faults and tests, or null where the rule has no window
 */
public record Rule(
        @Nullable String family,
        RuleKind rule,
        double limit,
        @Nullable Integer windowDays) {
    public Rule {
        family = Require.optionalName("family", family);
        Require.positive("limit", limit);
        Require.within("limit", limit, 0, Reading.MOST_KM);
        if (windowDays != null) {
            Require.within("window_days", windowDays, 1, 3_650);
        }
        if (rule == RuleKind.SAFETY) {
            Require.within("limit", limit, 1, 60);
        }
    }
}
