package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.visit.Visit;
import java.util.List;
import java.util.Optional;

/**
 * Days of one depot: its visits of the plan's first weeks with bay, day and hour.
 *
 * @param depot the depot
 * @param days what was laid, and what was not, with the reason
 */
public record DepotDays(String depot, DayPlan days) {
    /** The place of a visit; empty where it has none, or its week is too far ahead for days. */
    public static Optional<DayPlan.Laid> find(List<DepotDays> all, Visit visit) {
        return all.stream()
                .filter(each -> each.depot().equals(visit.depot()))
                .flatMap(each -> each.days().laid().stream())
                .filter(laid -> laid.truck().equals(visit.truck())
                        && laid.diagnosis() == visit.diagnosis()
                        && IsoWeek.of(laid.start().toLocalDate()).equals(visit.week()))
                .findFirst();
    }
}
