package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A due item of a plan, and the week of the visit that answers it.
 *
 * @param week null where no visit does
 */
record PlannedItem(DueItem item, @Nullable IsoWeek week) {
    /** What a plan found at a depot; of two with the same key the more pressing one stays. */
    static Map<AlertKey, PlannedItem> of(Plan plan, String depot) {
        Map<AlertKey, IsoWeek> weeks = new HashMap<>();
        for (Visit visit : plan.visits()) {
            visit.dueItems().forEach(item -> weeks.put(AlertKey.of(item), visit.week()));
        }
        Map<AlertKey, PlannedItem> all = new LinkedHashMap<>();
        for (DueItem item : plan.dueItems()) {
            if (item.depot().equals(depot)) {
                AlertKey key = AlertKey.of(item);
                all.merge(key, new PlannedItem(item, weeks.get(key)), PlannedItem::morePressing);
            }
        }
        return all;
    }

    private static PlannedItem morePressing(PlannedItem one, PlannedItem other) {
        return other.item.by().isBefore(one.item.by()) ? other : one;
    }
}
