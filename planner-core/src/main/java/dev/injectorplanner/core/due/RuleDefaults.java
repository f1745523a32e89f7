package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.RuleKind;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Limits that hold where the site gives none. They are common practice without a source, set on the cautious side: the
 * engine maker's own limits go before them, as site rules.
 *
 * <table>
 * <caption>Planner defaults</caption>
 * <tr><td>age</td><td>84 months since fitting</td></tr>
 * <tr><td>distance</td><td>400,000 km since fitting</td></tr>
 * <tr><td>engine hours</td><td>10,000 h since fitting</td></tr>
 * <tr><td>faults</td><td>3 of one cylinder in 30 days</td></tr>
 * <tr><td>balance</td><td>4 mm3/stroke either way, a test of the last 90 days</td></tr>
 * <tr><td>return flow</td><td>60 ml/min, a test of the last 90 days</td></tr>
 * <tr><td>warranty</td><td>test within the 60 days before it ends</td></tr>
 * </table>
 *
 * <p>There is no default for risk: a chance is weighed against costs, which only the site can judge by a fixed limit.
 */
public final class RuleDefaults {
    /** Window of faults and tests where a site rule leaves it empty. */
    static final int WINDOW_DAYS = 90;

    private static final Map<RuleKind, DueRule> DEFAULTS = new EnumMap<>(RuleKind.class);

    static {
        put(RuleKind.AGE_MONTHS, 84, null);
        put(RuleKind.DISTANCE_KM, 400_000, null);
        put(RuleKind.ENGINE_HOURS, 10_000, null);
        put(RuleKind.FAULTS, 3, 30);
        put(RuleKind.BALANCE, 4, 90);
        put(RuleKind.RETURN_FLOW, 60, 90);
        put(RuleKind.WARRANTY, 60, null);
    }

    private RuleDefaults() {}

    private static void put(RuleKind kind, double limit, @Nullable Integer windowDays) {
        DEFAULTS.put(kind, new DueRule(kind, limit, windowDays, DueRule.DEFAULT));
    }

    /** The default of a kind, or null where there is none. */
    static @Nullable DueRule of(RuleKind kind) {
        return DEFAULTS.get(kind);
    }
}
