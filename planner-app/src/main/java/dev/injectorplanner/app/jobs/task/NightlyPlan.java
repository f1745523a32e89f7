package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.TaskResult;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.planning.Planning.Planned;

/** Plans one depot for the day it is due, on the depot's calendar. */
public final class NightlyPlan implements JobTask {
    private final Planning planning;
    private final PlanKeeper keeper;

    public NightlyPlan(Planning planning, PlanKeeper keeper) {
        this.planning = planning;
        this.keeper = keeper;
    }

    @Override
    public TaskResult run(JobContext context) {
        String depot = context.key().depot();
        Planned planned = planning.plan(context.day(), planning.policy(), depot);
        keeper.keep(context.key().text(), depot, context.key().due(), planned);
        return TaskResult.counted(PlanCounts.of(planned.plan()));
    }
}
