package dev.injectorplanner.core.schedule;

/** Chooses at most one option a truck. The one door to scheduling: callers do not know which method stands behind it. */
public interface VisitScheduler {
    /** Same request, same answer. */
    Schedule schedule(ScheduleRequest request);

    /**
     * The same, near a schedule of a request that was little different: what need not move stays, as far as the method that
     * stands behind this can.
     */
    default Schedule schedule(ScheduleRequest request, Schedule near) {
        return schedule(request);
    }

    /**
     * The same request with other prices, from a schedule that fits it: a short search for a better one, where no bound is
     * asked for.
     */
    default Schedule reschedule(ScheduleRequest request, Schedule from) {
        return schedule(request, from);
    }
}
