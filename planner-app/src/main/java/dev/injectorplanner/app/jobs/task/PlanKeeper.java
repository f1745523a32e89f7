package dev.injectorplanner.app.jobs.task;

import dev.injectorplanner.app.planning.Planning.Planned;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Keeps the plans that jobs make. */
@FunctionalInterface
public interface PlanKeeper {
    /**
     * Keeps a plan. A run may come twice after a crash: the same key twice must leave one plan.
     *
     * @param runKey one for each plan a run makes
     * @param depot the depot it plans, or null for all
     * @param at when it was due
     * @param by what let it be made, for the audit trail
     */
    void keep(String runKey, @Nullable String depot, Instant at, Planned planned, String by);

    /** The same by the times of a job. */
    default void keep(String runKey, @Nullable String depot, Instant at, Planned planned) {
        keep(runKey, depot, at, planned, "jobs");
    }
}
