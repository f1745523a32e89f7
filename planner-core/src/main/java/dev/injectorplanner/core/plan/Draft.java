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
 * @param safety diagnosis visits
 * @param days visits of the first weeks laid into days
 * @param allocation which piece goes to which visit
 * @param kits the kits that the allocation has to serve
 * @param seconds second visits beside those of the schedule
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
        List<DepotDays> days,
        Allocation allocation,
        List<KitNeed> kits,
        List<SecondVisit> seconds) {
    Draft {
        seconds = List.copyOf(seconds);
        days = List.copyOf(days);
        kits = List.copyOf(kits);
    }

    /** A schedule without days and parts yet. */
    Draft(
            Learned learned,
            CapacityCalendar calendar,
            Holds holds,
            TruckChoicesBuilder builder,
            Map<String, TruckChoices> cases,
            ScheduleRequest request,
            Schedule schedule,
            SafetyPlan safety) {
        this(
                learned,
                calendar,
                holds,
                builder,
                cases,
                request,
                schedule,
                new Booked(request, schedule),
                safety,
                List.of(),
                Allocation.NONE,
                List.of(),
                List.of());
    }

    /** Another schedule, with its options and prices. */
    Draft with(
            TruckChoicesBuilder otherBuilder,
            Map<String, TruckChoices> otherCases,
            ScheduleRequest otherRequest,
            Schedule other) {
        return new Draft(learned, calendar, holds, otherBuilder, otherCases, otherRequest, other, safety);
    }

    /** The same request answered otherwise. */
    Draft with(Schedule other) {
        return with(builder, cases, request, other);
    }

    /** With its parts. */
    Draft with(Allocation pieces, List<KitNeed> served) {
        return new Draft(
                learned, calendar, holds, builder, cases, request, schedule, booked, safety, days, pieces, served,
                seconds);
    }

    /** With its visits laid into days. */
    Draft withDays(List<DepotDays> laid) {
        return new Draft(
                learned,
                calendar,
                holds,
                builder,
                cases,
                request,
                schedule,
                booked,
                safety,
                laid,
                allocation,
                kits,
                seconds);
    }

    /** With second visits beside the others, laid into days with them. */
    Draft with(List<SecondVisit> placed, List<DepotDays> laid) {
        return new Draft(
                learned,
                calendar,
                holds,
                builder,
                cases,
                request,
                SecondVisitPlacer.trueCost(this, placed),
                new Booked(SecondVisitPlacer.request(this, placed), SecondVisitPlacer.schedule(this, placed)),
                safety,
                laid,
                allocation,
                kits,
                placed);
    }

    TruckChoices choicesOf(String truck) {
        TruckChoices found = cases.get(truck);
        if (found == null) {
            throw new IllegalStateException("truck " + truck + " was scheduled and is not known");
        }
        return found;
    }
}
