package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.planning.Planning.Planned;
import java.time.Instant;

/** Keeps the plans that jobs make. */
@FunctionalInterface
public interface PlanKeeper {
    /**
     * Keeps a plan. A run may come twice after a crash: the same key twice must leave one plan.
     *
     * @param runKey one for each plan a run makes
     * @param depot the depot it plans
     * @param at when it was due
     */
    void keep(String runKey, String depot, Instant at, Planned planned);
}
