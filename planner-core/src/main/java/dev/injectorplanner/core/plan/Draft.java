package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.allocation.Allocation;
import dev.injectorplanner.core.allocation.KitNeed;
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
 * @param allocation which piece goes to which visit
 * @param kits the kits that the allocation has to serve
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
        Allocation allocation,
        List<KitNeed> kits) {
    Draft {
        kits = List.copyOf(kits);
    }

    /** A schedule that nobody has given parts yet. */
    Draft(
            Learned learned,
            CapacityCalendar calendar,
            Holds holds,
            TruckChoicesBuilder builder,
            Map<String, TruckChoices> cases,
            ScheduleRequest request,
            Schedule schedule) {
        this(
                learned,
                calendar,
                holds,
                builder,
                cases,
                request,
                schedule,
                new Booked(request, schedule),
                Allocation.NONE,
                List.of());
    }

    /** Another schedule, with its options and prices. */
    Draft with(
            TruckChoicesBuilder otherBuilder,
            Map<String, TruckChoices> otherCases,
            ScheduleRequest otherRequest,
            Schedule other) {
        return new Draft(
                learned, calendar, holds, otherBuilder, otherCases, otherRequest, other, booked, Allocation.NONE, kits);
    }

    /** With its parts. */
    Draft with(Allocation pieces, List<KitNeed> served, Booked otherBooked) {
        return new Draft(learned, calendar, holds, builder, cases, request, schedule, otherBooked, pieces, served);
    }

    TruckChoices choicesOf(String truck) {
        TruckChoices found = cases.get(truck);
        if (found == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and is not known");
        }
        return found;
    }
}
