package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.core.plan.Plan;
import java.util.LinkedHashMap;
import java.util.Map;

/** A plan in the few numbers of a history line. */
final class PlanCounts {
    private PlanCounts() {}

    static Map<String, Long> of(Plan plan) {
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("due items", (long) plan.dueItems().size());
        counts.put("visits", (long) plan.visits().size());
        counts.put("without a visit", (long) plan.unplanned().size());
        counts.put("to order", (long) plan.parts().orders().size());
        return counts;
    }
}
