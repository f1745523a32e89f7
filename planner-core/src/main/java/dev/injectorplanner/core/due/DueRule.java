package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.RuleKind;
import org.jspecify.annotations.Nullable;

/**
 * A rule in force for a family.
 *
 * @param kind what it looks at
 * @param limit the limit in the rule's unit
 * @param windowDays days looked back, or null where the rule has no window
 * @param source whose limit it is: {@link #SITE} or {@link #DEFAULT}
 */
public record DueRule(RuleKind kind, double limit, @Nullable Integer windowDays, String source) {
    /** A limit from the site's table of rules. */
    public static final String SITE = "site rule";

    /** A limit that holds until the site gives its own. */
    public static final String DEFAULT = "planner default";

    int window() {
        return windowDays == null ? RuleDefaults.WINDOW_DAYS : windowDays;
    }
}
