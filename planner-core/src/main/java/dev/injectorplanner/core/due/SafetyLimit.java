package dev.injectorplanner.core.due;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.RuleKind;
import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How soon a truck with a fuel leak or a fault of its fuel pressure must be in a bay.
 *
 * @param days days from the first sighting, 0 to 60
 * @param windowDays sightings of this many days back count as active, 1 to 365
 * @param latePerDay what a day later is weighed with where the limit cannot be met, in the site's currency
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record SafetyLimit(int days, int windowDays, double latePerDay) implements SafetyLimitBuilder.With {
    public SafetyLimit {
        Require.within("safety_days", days, 0, 60);
        Require.within("safety_window_days", windowDays, 1, 365);
        Require.notNegative("safety_late_per_day", latePerDay);
    }

    /**
     * Planner defaults, common practice without a source: 3 days, sightings of the last 30 days, 50 a day. The engine maker
     * and local codes may ask for the truck to be stopped at once.
     */
    public static SafetyLimit standard() {
        return new SafetyLimit(3, 30, 50);
    }

    /** What holds for a family: the site's rule where it has one. */
    SafetyLimit of(RuleBook rules, String family) {
        return rules.find(family, RuleKind.SAFETY)
                .map(rule -> new SafetyLimit(
                        (int) rule.limit(), rule.windowDays() == null ? windowDays : rule.windowDays(), latePerDay))
                .orElse(this);
    }

    /** Whose limit it is. */
    public String source() {
        return equals(standard()) ? DueRule.DEFAULT : DueRule.SITE;
    }
}
