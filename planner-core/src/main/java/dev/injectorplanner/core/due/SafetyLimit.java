package dev.injectorplanner.core.due;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.RuleKind;
import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How soon a truck with a fuel leak or a fault of its fuel pressure must be in a bay.
 *
 * @param days days from the first report, 0 to 60
 * @param windowDays reports of one fault that are further apart than this count their days anew, 1 to 365; none of them is
 *     closed by silence
 * @param latePerDay what a day later is weighed with where the limit cannot be met, in the site's currency
 * @param diagnosisHours labour of a diagnosis visit, 0.25 to 24
 */
@RecordBuilder
@RecordBuilder.Options(addClassRetainedGenerated = true)
public record SafetyLimit(int days, int windowDays, double latePerDay, double diagnosisHours)
        implements SafetyLimitBuilder.With {
    private static final double DIAGNOSIS_HOURS = 1.5;

    public SafetyLimit {
        Require.within("safety_days", days, 0, 60);
        Require.within("safety_window_days", windowDays, 1, 365);
        Require.notNegative("safety_late_per_day", latePerDay);
        Require.within("diagnosis_hours", diagnosisHours, 0.25, 24);
    }

    /** With a diagnosis of the usual length. */
    public SafetyLimit(int days, int windowDays, double latePerDay) {
        this(days, windowDays, latePerDay, DIAGNOSIS_HOURS);
    }

    /**
     * Planner defaults, common practice without a source: 3 days, reports at most 30 days apart, 50 a day, an hour and a half
     * for a diagnosis. The engine maker and local codes may ask for the truck to be stopped at once.
     */
    public static SafetyLimit standard() {
        return new SafetyLimit(3, 30, 50);
    }

    /** What holds for a family: the site's rule where it has one. */
    SafetyLimit of(RuleBook rules, String family) {
        return rules.find(family, RuleKind.SAFETY)
                .map(rule -> new SafetyLimit(
                        (int) rule.limit(),
                        rule.windowDays() == null ? windowDays : rule.windowDays(),
                        latePerDay,
                        diagnosisHours))
                .orElse(this);
    }

    /** Whose limit it is. */
    public String source() {
        return equals(standard()) ? DueRule.DEFAULT : DueRule.SITE;
    }
}
