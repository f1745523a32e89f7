package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.schedule.Booked;
import dev.injectorplanner.core.schedule.CapacityCalendar;
import dev.injectorplanner.core.schedule.Schedule;
import dev.injectorplanner.core.schedule.ScheduleRequest;
import java.util.List;
import java.util.Map;

/**
 * A schedule with what it was asked, before it is told as a plan.
 *
 * @param learned what the records say
 * @param calendar hours and bays, with those added
 * @param holds what the manager holds
 * @param builder made the cases
 * @param cases trucks in service with their ways, by truck, the most pressing first
 * @param request what the scheduler was asked
 * @param schedule its answer, checked against every limit
 * @param booked what the schedule takes of every week
 * @param safety diagnosis visits
 * @param days visits of the first weeks laid into days
 */
record Draft(
        Learned learned,
        CapacityCalendar calendar,
        Holds holds,
        TruckChoicesBuilder builder,
        Map<String, TruckChoices> cases,
        ScheduleRequest request,
        Schedule schedule,
        Booked booked,
        SafetyPlan safety,
        List<DepotDays> days) {
    TruckChoices choicesOf(String truck) {
        TruckChoices found = cases.get(truck);
        if (found == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and is not known");
        }
        return found;
    }
}
