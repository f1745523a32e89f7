package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.finding.DueFinding;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A finding of a plan, and the week of the visit that answers it.
 *
 * @param week null where no visit does
 */
record Found(DueFinding finding, @Nullable IsoWeek week) {
    /** What a plan found at a depot; of two with the same key the more pressing one stays. */
    static Map<AlertKey, Found> of(Plan plan, String depot) {
        Map<AlertKey, IsoWeek> weeks = new HashMap<>();
        for (Visit visit : plan.visits()) {
            visit.findings().forEach(finding -> weeks.put(AlertKey.of(finding), visit.week()));
        }
        Map<AlertKey, Found> all = new LinkedHashMap<>();
        for (DueFinding finding : plan.findings()) {
            if (finding.depot().equals(depot)) {
                AlertKey key = AlertKey.of(finding);
                all.merge(key, new Found(finding, weeks.get(key)), Found::morePressing);
            }
        }
        return all;
    }

    private static Found morePressing(Found one, Found other) {
        return other.finding.by().isBefore(one.finding.by()) ? other : one;
    }
}
