package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.Planning.Planned;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Replans the depots whose trucks have readings, faults or tests that came in since the last sweep. The first sweep
 * only notes how far the histories reach: the nightly plan has seen them.
 */
public final class Sweep implements JobTask {
    private final Planning planning;
    private final PlanKeeper keeper;
    private final NewRecords records;

    public Sweep(Planning planning, PlanKeeper keeper, NewRecords records) {
        this.planning = planning;
        this.keeper = keeper;
        this.records = records;
    }

    @Override
    public TaskResult run(JobContext context) {
        NewRecords.Found found = records.since();
        Set<String> depots = found.depots().keySet();
        long dueItems = 0;
        for (Map.Entry<String, ZoneId> depot : found.depots().entrySet()) {
            Instant due = context.key().due();
            Planned planned =
                    planning.plan(LocalDate.ofInstant(due, depot.getValue()), planning.policy(), depot.getKey());
            keeper.keep(context.key().text() + "/" + depot.getKey(), depot.getKey(), due, planned);
            dueItems += planned.plan().dueItems().size();
        }
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put("depots with news", (long) depots.size());
        counts.put("records", found.records());
        counts.put("due items", dueItems);
        return new TaskResult(counts, found.seen());
    }
}
