package dev.injectorplanner.core.schedule;

/** Chooses at most one option a truck. The one door to scheduling: callers do not know which method stands behind it. */
public interface VisitScheduler {
    /** Same request, same answer. */
    Schedule schedule(ScheduleRequest request);
}
